import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import type { TestDatabase } from '../support/database.ts'
import { drawnJpeg } from '../support/pictures.ts'
import { putOutByName } from '../support/put-out.ts'
import { receivedPhotos } from '../support/received-photos.ts'
import {
  allSent,
  button,
  enroll,
  greta,
  ines,
  recordTemperatures,
  shows,
  signIn,
  type,
} from './support/bay.ts'
import { takeForArrival, writeArrival } from './support/begin.ts'
import { wrongPin } from './support/second-person.ts'
import { openNetwork, type ShopNetwork } from './support/shop-network.ts'
import { plate } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { makeTablet, type Tablet } from './support/tablet.ts'
import { tap } from './support/touch.ts'

let database: TestDatabase
let orderId = ''
const stage = setStage(null, async (made) => {
  database = made
  orderId = await writeArrival(made)
})
/** A demo vehicle whose right rear wheel is off. */
const atWork = 'S. Achterberg'

let network: ShopNetwork
let tablet: Tablet
let bay: Page

beforeAll(async () => {
  network = await openNetwork(stage().address)
  tablet = makeTablet(network.address)
  bay = await tablet.start()
  await bay.goto('/bay/enroll')
  await enroll(bay, await stage().desk.enrollmentCode())
  await signIn(bay, greta)
  await tap(button(bay, /^Signed in/))
  await signIn(bay, ines)
  await tap(bay.getByRole('link', { name: new RegExp(atWork) }))
  await shows(bay, /^Draw the sensor/)
  await button(bay, 'History', true).waitFor()
  await allSent(bay)
})
afterAll(async () => {
  await tablet.throwAway()
  await network.close()
})

const writersOf = async (kind: string) =>
  (await stage().desk.entriesOf(orderId)).flatMap(({ kind: of, writtenBy }) =>
    of === kind && writtenBy.kind === 'staff' ? [writtenBy.staffId] : [],
  )

/** Text as a browser may lay it on the disk. */
const lies = (text: string): boolean => {
  const disk = tablet.disk()
  const wide = Buffer.from(text, 'utf16le')
  return [Buffer.from(text), wide, Buffer.from(wide).swap16()].some((bytes) => disk.includes(bytes))
}

const strikes = async (of: string) =>
  (await stage().desk.entriesOf(of)).flatMap((one) => (one.kind === 'entry.struck' ? [one] : []))

it('takes a second person’s PIN while the server is out of reach, and vouches for it', async () => {
  const atWorkId = /[0-9a-f-]{36}/.exec(bay.url())?.[0] ?? ''
  await allSent(bay)
  network.set('gone')
  await tap(button(bay, 'History', true))
  await tap(button(bay, /^Withdraw \d+: Wheel off/).first())
  await tap(button(bay, /^Was not done/))
  await tap(button(bay, 'Go on: second person'))

  // Bo never signed in on this tablet: the step waits, and says for what.
  await tap(button(bay, people.bo.name, true))
  await type(bay, people.bo.pin)
  await bay.getByText(/this tablet cannot check this PIN/).waitFor()

  await tap(button(bay, 'Somebody else'))
  await tap(button(bay, greta.name, true))
  await type(bay, wrongPin)
  await bay.getByText('The PIN is wrong').waitFor()
  await type(bay, greta.pin)
  await shows(bay, 'History')
  const before = await strikes(atWorkId)

  network.set('there')
  await expect.poll(async () => (await strikes(atWorkId)).length).toBe(before.length + 1)
  expect((await strikes(atWorkId)).at(-1)?.payload.secondPerson).toMatchObject({
    staffId: people.greta.id,
    proof: { how: 'tablet' },
  })
  await tap(button(bay, 'Back to the step'))
  await tap(bay.getByRole('link', { name: 'My vehicles' }))
  await takeForArrival(bay)
})

it('changes the person without the server: by their own PIN, and not for whoever never signed in here', async () => {
  network.set('gone')
  await tap(button(bay, /^Signed in/))
  await tap(button(bay, people.bo.name).last())
  await type(bay, people.bo.pin)
  await bay.getByText(/this tablet cannot check this PIN/).waitFor()
  await tap(button(bay, 'Somebody else'))
  await tap(button(bay, greta.name).last())
  await type(bay, '000000')
  await bay.getByText('The PIN is wrong').waitFor()
  await type(bay, greta.pin)
  await button(bay, new RegExp(`Signed in: ${greta.name}`)).waitFor()
})

it('sends what everyone wrote as theirs once the server is back, and nobody types a PIN again', async () => {
  await recordTemperatures(bay)
  await button(bay, /^Undo/).waitFor()
  await tap(button(bay, /^Signed in/))
  await signIn(bay, ines)
  network.set('there')
  await expect.poll(() => writersOf('surroundings.recorded')).toEqual([people.greta.id])
  // The session is one of the server now: it answers what only a person may ask.
  await expect
    .poll(
      () =>
        bay.evaluate(async () => {
          const reply = await fetch('/api/sessions/current', { headers: { 'bayledger-face': 'bay' } })
          return (await reply.json()).staff?.staffId
        }),
      { timeout: 30_000 },
    )
    .toBe(people.ines.id)
  await button(bay, new RegExp(`Signed in: ${ines.name}`)).waitFor()
})

it('keeps nothing on its disk that can be read there', async () => {
  // The names of its keys are no secret, and show that this is where a browser keeps things.
  await expect.poll(() => lies('last-contact')).toBe(true)
  expect([plate, ines.name, greta.name, 'surroundings.recorded'].filter(lies)).toEqual([])
})

/** Takes a photo by touch: the finger opens the camera, which gives back this file. */
const photograph = async (page: Page, width: number): Promise<void> => {
  const [camera] = await Promise.all([page.waitForEvent('filechooser'), tap(page.locator('.camera-input'))])
  const buffer = await drawnJpeg({ width, height: 300 })
  await camera.setFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer })
  await page.getByText('Photos not yet sent: 1').waitFor()
}

it('opens nothing once the owner’s hours have passed without the server, and still hands in what was tapped, photos too', async () => {
  const before = (await receivedPhotos(database)).length
  network.set('gone')
  await tap(button(bay, /^Lights at key-on/))
  await tap(button(bay, /^Flashes, then solid/))
  await shows(bay, 'Read what the vehicle stored')
  await button(bay, /^Undo/).waitFor()
  await photograph(bay, 400)
  // The hours are those of the demo shop: 72 (`apps/api/src/features/devices/store/offline-hours.ts`).
  await bay.clock.install({ time: Date.now() + 73 * 3_600_000 })
  await bay.reload()
  await bay.getByText('This tablet has been out of the server’s reach for too long.').waitFor()
  expect(await bay.locator('body').textContent()).not.toContain(plate)
  expect(await writersOf('telltale.observed')).toEqual([])

  network.set('there')
  await bay.clock.setSystemTime(Date.now())
  await bay.reload()
  await expect.poll(() => writersOf('telltale.observed')).toEqual([people.ines.id])
  await expect.poll(async () => (await receivedPhotos(database)).length).toBe(before + 1)
  // The server lets in whoever was signed in with it before, as long as that session lasts.
  await shows(bay, /^(Who is here\?|Read what the vehicle stored)$/)
  if (await bay.getByRole('heading', { name: 'Who is here?' }).count()) await signIn(bay, ines)
  await shows(bay, 'Read what the vehicle stored')
  await bay.getByText(/ot yet sent/).waitFor({ state: 'detached' })
})

it('hands in what was tapped on it after it was put out, opens nothing more and asks for its enrollment', async () => {
  await bay.goto(new URL(`/bay/orders/${orderId}`, network.address).pathname)
  await shows(bay, 'Read what the vehicle stored')
  network.set('gone')
  await tap(bay.locator('.plan-button[aria-label^="left front"]'))
  await tap(button(bay, /GA-1/))
  await type(bay, '31.0')
  await button(bay, /^Undo/).waitFor()
  await photograph(bay, 401)
  expect(await putOutByName(database.serviceUrl, 'Bay 9')).toBe(true)

  network.set('there')
  await shows(bay, 'Enroll this tablet')
  await bay.getByText('Handed in to the desk: 2.').waitFor()
  // Its entry is in the tray and not in the record: nothing names the photo there.
  await bay.getByText(/^Photos that the desk did not get: 1\./).waitFor()
  expect(await writersOf('wheel.checked')).toEqual([])
  const { refused: tray } = (await stage().desk.get('/api/refused-entries')) as { refused: unknown }
  const ofInes = {
    code: 'TABLET_PUT_OUT',
    orderId,
    writtenBy: { kind: 'staff', staffId: people.ines.id },
  }
  expect(tray).toMatchObject([
    { kind: 'wheel.checked', ...ofInes },
    { kind: 'photo.attached', ...ofInes },
  ])
  for (const path of ['/bay', new URL(`/bay/orders/${orderId}`, network.address).pathname]) {
    await bay.goto(path)
    await shows(bay, 'Enroll this tablet')
    expect(await bay.locator('body').textContent()).not.toContain(plate)
  }
  await enroll(bay, await stage().desk.enrollmentCode())
  await signIn(bay, ines)
  await shows(bay, 'My vehicles')
  await tap(bay.getByRole('link', { name: plate }))
  await shows(bay, 'Read what the vehicle stored')
  await allSent(bay)
  expect(await bay.getByText(/Photos not yet sent/).count()).toBe(0)
})
