import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import { otherLinnet } from '../support/free-vehicles.ts'
import { allSent, button, enroll, ines, recordTemperatures, shows, signIn, type } from './support/bay.ts'
import { takeForArrival, writeArrival } from './support/begin.ts'
import { keptFiles, keptOrders, keptReads } from './support/kept-on-tablet.ts'
import { writeNewerProgram } from './support/newer-program.ts'
import { openNetwork, type ShopNetwork } from './support/shop-network.ts'
import { plate } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { makeTablet, type Tablet } from './support/tablet.ts'
import { tap } from './support/touch.ts'

let orderId = ''
let otherId = ''
const other = otherLinnet.plate
const stage = setStage(null, async (database) => {
  orderId = await writeArrival(database)
  otherId = await writeArrival(database, other)
})

let network: ShopNetwork
let tablet: Tablet
let bay: Page
/** What keeps the bay on the tablet, and what seals and sends. */
const neededLater = /^\/(bay-worker|assets\/(parcel-box|hand-in))/
const newer = mkdtempSync(join(tmpdir(), 'bayledger-newer-'))

beforeAll(async () => {
  network = await openNetwork(stage().address)
  tablet = makeTablet(network.address)
  bay = await tablet.start()
  network.withhold(neededLater)
  await bay.goto('/bay/enroll')
  await enroll(bay, await stage().desk.enrollmentCode())
  await signIn(bay, ines)
  await shows(bay, 'My vehicles')
})
afterAll(async () => {
  await tablet.throwAway()
  await network.close()
  rmSync(newer, { recursive: true, force: true })
})

const version = (): Promise<string | null> => bay.locator('.my-vehicles-version').textContent()

/** The orders that the list shows, by their ids. */
const listed = (): Promise<string[]> =>
  bay
    .locator('.vehicle-link')
    .evaluateAll((links) => links.map((link) => link.getAttribute('href')?.split('/').at(-1) ?? ''))

/** How often the ledger of the order holds entries of a kind. */
const written = async (kind: string): Promise<number> =>
  (await stage().desk.entriesOf(orderId)).filter((entry) => entry.kind === kind).length

const description = (at: number) => bay.locator('.vehicle-link strong').nth(at).textContent()

const pictureOnFailure = () =>
  onTestFailed(async () => {
    await bay.screenshot({ path: 'out/bay-1.png' })
  })

/** Runs in the page. Whether a newer program is on the tablet whole and waits. */
const newerProgramWaits = async (): Promise<boolean> => {
  const kept = await navigator.serviceWorker.getRegistration('/bay')
  await kept?.update()
  const coming = kept?.installing
  if (coming?.state === 'installing')
    await new Promise((resolve) => {
      coming.addEventListener('statechange', resolve, { once: true })
    })
  return kept?.waiting !== undefined && kept.waiting !== null
}

describe('a tablet that has loaded half of the program', () => {
  it('says so, and keeps and sends what is tapped while the network is gone', async () => {
    pictureOnFailure()
    await bay.getByText('Still loading: stay in Wi-Fi').waitFor()
    await takeForArrival(bay, other)
    network.set('gone')
    await recordTemperatures(bay)
    // The offer to undo says that the tablet holds it.
    await button(bay, /^Undo/).waitFor()
    await bay.getByText('Not yet sent: 2').waitFor()
    const recorded = async () =>
      (await stage().desk.entriesOf(otherId)).filter(({ kind }) => kind === 'surroundings.recorded')
    expect(await recorded()).toEqual([])
    network.withhold(null)
    network.set('there')
    await allSent(bay)
    expect(await recorded()).toHaveLength(1)
  })
})

describe('the bay on a tablet', () => {
  beforeAll(async () => {
    // A browser writes its cookies down every half minute; a tablet has been enrolled for longer than that.
    await tablet.shutDown()
    bay = await tablet.start()
    await bay.goto('/bay')
    await takeForArrival(bay)
    await tap(bay.getByRole('link', { name: 'My vehicles' }))
    await shows(bay, 'My vehicles')
  })

  it('is kept there whole after one visit, and nothing of another face or of the service with it', async () => {
    await bay.evaluate(async () => {
      await navigator.serviceWorker.ready
    })
    const kept = Object.keys(await keptFiles(bay))
    expect(kept).toContain('/bay.html')
    expect(kept.some((path) => path.startsWith('/assets/bay-order-'))).toBe(true)
    expect(kept.filter((path) => /^\/(assets\/)?(desk|customer)|^\/api\//.test(path))).toEqual([])
    const worker = await bay.request.get('/bay-worker.js')
    expect(worker.headers()).toMatchObject({
      'cache-control': 'no-cache',
      'content-type': expect.stringMatching(/^(text|application)\/javascript/),
    })
    const manifest = await bay.request.get('/bay.webmanifest')
    expect(manifest.headers()['content-type']).toMatch(/^application\/manifest\+json/)
    expect(await version()).toMatch(/^Bayledger \d+\.\d+\.\d+\+[0-9a-f]{8}$/)
  })

  it('opens without a network, at every address of the bay', async () => {
    network.set('gone')
    for (const path of ['/bay', '/bay/enroll']) {
      await bay.goto(path)
      await bay.getByRole('button', { name: 'Bright look' }).waitFor()
    }
    network.set('there')
    await bay.goto('/bay')
    await shows(bay, 'My vehicles')
  })

  it('keeps no answer of a network that wants a sign-in first', async () => {
    network.set('captive')
    await bay.reload()
    await bay.getByRole('button', { name: 'Bright look' }).waitFor()
    await bay.evaluate(async () => {
      const kept = await navigator.serviceWorker.getRegistration('/bay')
      await kept?.update().catch(() => undefined)
    })
    expect(
      Object.values(await keptFiles(bay)).filter((text) => text.includes('Sign in to this network')),
    ).toEqual([])
    network.set('there')
    await bay.goto('/bay')
    await shows(bay, 'My vehicles')
  })
})

describe('a newer program', () => {
  it('waits while a step is open, takes over between orders, and what waits to be sent arrives once', async () => {
    pictureOnFailure()
    await tap(bay.getByRole('link', { name: plate }))
    await shows(bay, 'Note the temperatures')
    await bay.route('**/api/{entries,bay/parcels}', (route) => route.abort())
    await type(bay, '27')
    await tap(button(bay, /^Next/))
    await tap(button(bay, /^Cold/))
    await tap(button(bay, 'Record the temperatures'))
    await shows(bay, 'Watch the warning light')
    await tap(button(bay, /^Lights at key-on/))
    const address = bay.url()

    writeNewerProgram(newer, '9.0.0')
    network.servePages(newer)
    // A look for it that began before the update finds nothing, and the next one is joined to that.
    await expect.poll(() => bay.evaluate(newerProgramWaits)).toBe(true)
    // The step is as it was, half filled in.
    await bay.locator('.row-cell', { hasText: 'Lights at key-on' }).waitFor()

    await tap(bay.getByRole('link', { name: 'My vehicles' }))
    await bay.locator('.my-vehicles-version', { hasText: '9.0.0+' }).waitFor()
    await bay.unroute('**/api/{entries,bay/parcels}')
    await bay.goto(address)
    await shows(bay, 'Watch the warning light')
    await bay.locator('.row-cell', { hasText: 'Lights at key-on' }).waitFor()
    await expect.poll(() => written('surroundings.recorded')).toBe(1)
    await bay.getByText(/Not yet sent/).waitFor({ state: 'detached' })
    expect(await written('surroundings.recorded')).toBe(1)
  })
})

describe('a tablet that has been at its list once', () => {
  beforeAll(async () => {
    await tap(bay.getByRole('link', { name: 'My vehicles' }))
    await shows(bay, 'My vehicles')
  })

  it('holds every vehicle of it, and what the work needs, and nothing else', async () => {
    pictureOnFailure()
    const rows = await listed()
    expect(rows.length).toBeGreaterThan(3)
    await expect.poll(async () => (await keptOrders(bay)).sort()).toEqual([...rows].sort())
    expect(new Set((await keptReads(bay)).map(([first]) => first))).toEqual(
      new Set(['staff', 'settings', 'instruments', 'stock', 'floor', 'orders']),
    )
  })

  it('opens each of them when the network is gone', async () => {
    pictureOnFailure()
    await bay.evaluate(async () => {
      await navigator.serviceWorker.ready
    })
    network.set('gone')
    const rows = await listed()
    for (const at of rows.keys()) {
      const vehicle = await description(at)
      await tap(bay.locator('.vehicle-link').nth(at))
      await bay.locator('.bay-vehicle', { hasText: vehicle ?? '' }).waitFor()
      await tap(bay.getByRole('link', { name: 'My vehicles' }))
      await shows(bay, 'My vehicles')
    }
  })

  it('holds what was tapped and half filled in without a network when the battery dies, starts without one, and goes on', async () => {
    pictureOnFailure()
    await tap(bay.getByRole('link', { name: plate }))
    await shows(bay, 'Watch the warning light')
    await tap(button(bay, /^Flashes, then solid/))
    await shows(bay, 'Read what the vehicle stored')
    // The offer to undo says that the tablet holds it.
    await button(bay, /^Undo/).waitFor()
    await tap(button(bay, /^Can be read/))
    await tablet.cutPower()

    bay = await tablet.start()
    await bay.goto('/bay')
    await shows(bay, 'Who is here?')
    await signIn(bay, ines)
    await shows(bay, 'My vehicles')
    await bay.getByText(/The server is out of reach/).waitFor()
    await tap(bay.getByRole('link', { name: plate }))
    await shows(bay, 'Read what the vehicle stored')
    await bay.locator('.row-cell', { hasText: 'Can be read' }).waitFor()
    await tap(button(bay, /^left front/i))
    await tap(button(bay, /GA-1/))
    await type(bay, '31.6')
    await shows(bay, 'Gauge the right front tire')
    await button(bay, /^Undo/).waitFor()
    expect(await written('telltale.observed')).toBe(0)
  })

  it('sends it once when the network is back', async () => {
    pictureOnFailure()
    network.set('there')
    await expect.poll(() => written('wheel.checked'), { timeout: 60_000 }).toBe(1)
    await bay.getByText(/Not yet sent/).waitFor({ state: 'detached' })
    expect(await written('telltale.observed')).toBe(1)
    expect(await written('wheel.checked')).toBe(1)
  })

  it('forgets a vehicle that has left the list', async () => {
    pictureOnFailure()
    await tap(bay.getByRole('link', { name: 'My vehicles' }))
    await shows(bay, 'My vehicles')
    // An order that waits for others is read when it is opened, and held while it is on the screen.
    await tap(button(bay, /^Waiting elsewhere/))
    const all = await listed()
    const held = await keptOrders(bay)
    const at = all.findIndex((orderId) => !held.includes(orderId))
    expect(at).toBeGreaterThanOrEqual(0)
    await tap(bay.locator('.vehicle-link').nth(at))
    await expect.poll(() => keptOrders(bay)).toContain(all[at])
    await tap(bay.getByRole('link', { name: 'My vehicles' }))
    await bay.reload()
    await shows(bay, 'My vehicles')
    await expect.poll(() => keptOrders(bay)).not.toContain(all[at])
    await expect.poll(async () => (await keptOrders(bay)).sort()).toEqual([...(await listed())].sort())
  })
})
