import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed } from 'vitest'
import type { TestDatabase } from '../support/database.ts'
import { freeLinnet } from '../support/free-vehicles.ts'
import { drawnJpeg, pictureFacts } from '../support/pictures.ts'
import { receivedPhotos } from '../support/received-photos.ts'
import { tabTo, violationsOn } from './support/accessible.ts'
import { allSent, button, checkArrival, leaves, shows } from './support/bay.ts'
import { openBay, openDesk, takeForArrival, writeArrival } from './support/begin.ts'
import { customerLink, issueEstimate, openOrder } from './support/desk.ts'
import { keptParcels } from './support/kept-on-tablet.ts'
import { customer, wheels } from './support/silent-right-rear.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

/** Another vehicle, of which photos are taken. */
const photographed = { ...freeLinnet, orderId: '' }

let database: TestDatabase
const browser = setStage(null, async (made) => {
  database = made
  await writeArrival(made)
  photographed.orderId = await writeArrival(made, photographed.plate)
})

let desk: Page
let bay: Page
beforeAll(async () => {
  desk = await openDesk(browser())
  bay = await openBay(browser())
})

/** Opens the first finding with the keyboard only. */
const openFirst = async (page: Page) => {
  const summary = page.locator('.finding > summary').first()
  await summary.focus()
  await page.keyboard.press('Enter')
  await page.locator('.finding-evidence').first().waitFor()
}

describe('findings', () => {
  it('open to their evidence, lead to the next check, and are shown beside a technician’s own', async () => {
    onTestFailed(() => browser().picture('out'))
    await takeForArrival(bay)
    await checkArrival(bay, wheels, '27')

    await shows(bay, /readings say/)
    await bay.getByText('Sensor does not answer: right rear').waitFor()
    await bay.getByText(/\d+ more facts can still be read/).waitFor()
    await openFirst(bay)
    expect(await bay.locator('.finding-evidence').first().textContent()).toMatch(/right rear: Cause, silent/)
    expect(await violationsOn(bay)).toEqual([])

    // What is worth checking next opens at its own row; the findings come back when the wheel is looked at again.
    const asked = (await button(bay, /^Check next:/).textContent()) ?? ''
    await tap(button(bay, /^Check next:/))
    await leaves(bay, 'What the readings say')
    expect(await bay.locator('.row-cell[aria-current]').count(), asked).toBe(1)
    await tap(button(bay, /^left front/i))
    await tap(button(bay, 'Tire', true))
    await shows(bay, 'Look at the left front tire')
    await tap(button(bay, /^Not all/))
    await tap(button(bay, 'Leaks'))
    // A tire may be harmed in two ways at once.
    for (const one of ['Puncture', 'Run-low dust']) await tap(button(bay, one, true))
    expect(await bay.locator('.row-option[aria-pressed="true"]').count()).toBe(2)
    for (const one of [/^Puncture/, /^Run-low dust/]) await tap(bay.locator('.row-option', { hasText: one }))
    await tap(bay.locator('.row-option', { hasText: 'No damage' }))
    await tap(bay.locator('.row-option', { hasText: 'All sound' }))
    await tap(button(bay, '7', true))
    await shows(bay, /readings say/)
    expect(await bay.locator('.severity-word').allTextContents()).toEqual([
      'Repair before release',
      'Cause',
      'Not checked',
    ])

    // A check that cannot be made is skipped with a reason, by keys alone, and another one is called for.
    const first = (await button(bay, /^Check next:/).textContent()) ?? ''
    await button(bay, 'Skip this check').focus()
    await bay.keyboard.press('Enter')
    await shows(bay, 'Skip this check: why?')
    expect(await bay.evaluate(() => document.activeElement?.textContent)).toBe('Skip this check: why?')
    expect(await violationsOn(bay)).toEqual([])
    await tabTo(bay, 'it cannot be reached now')
    await bay.keyboard.press('Enter')
    await shows(bay, /readings say/)
    await bay
      .getByText(/: it cannot be reached now$/)
      .first()
      .waitFor()
    await expect.poll(() => button(bay, /^Check next:/).textContent()).not.toBe(first)

    await tap(button(bay, 'I see it otherwise'))
    await bay.getByRole('textbox', { name: 'My finding' }).fill('A bent antenna ring at the right rear')
    await tap(button(bay, /^Next/))
    await bay.getByRole('textbox', { name: 'My reason' }).fill('Seen with my own eyes')
    await tap(button(bay, 'Record my own finding'))
    await shows(bay, /Nothing for the bay now|Waiting/)

    await allSent(bay)
    await openOrder(desk, customer)
    const findings = desk.locator('#findings')
    await expect
      .poll(() => findings.textContent(), { timeout: 60_000 })
      .toContain('A bent antenna ring at the right rear')
    const text = (await findings.textContent()) ?? ''
    expect(text).toContain('Ines Halloran-Voss finds otherwise')
    expect(text).toContain('Seen with my own eyes')
    expect(text).toContain('Sensor does not answer: right rear')
    await openFirst(desk)
    await findings
      .getByText(/no wheel|the keys stay here|not driven on the road/)
      .first()
      .waitFor()
    await button(desk, 'Compare with today’s rules').click()
    await findings.getByText(/which is today’s\. From the same evidence .* nothing differs/).waitFor()
    expect(await violationsOn(desk)).toEqual([])

    await issueEstimate(desk)
    const link = new URL(await customerLink(desk))
    const phone = await browser().open('customer', link.pathname + link.hash)
    await phone.getByRole('heading', { name: 'What it costs' }).waitFor()
    expect((await phone.locator('.severity-word').allTextContents()).slice(-2)).toEqual([
      'To be repaired before it leaves',
      'The cause',
    ])
    const headings = await phone.getByRole('heading', { level: 2 }).allTextContents()
    expect(headings.slice(0, 4)).toEqual([
      'Can I drive it?',
      'What is dangerous',
      'The warning light',
      'What it costs',
    ])
    const dangerous = phone.getByRole('region', { name: 'What is dangerous' })
    expect(await dangerous.textContent()).toMatch(/What fixes it: .+ with tax\. You have not answered\./)
    await phone.getByText('A Yes to other work does not make the vehicle safe to drive.').waitFor()
    await phone.getByText(/Our technician sees the cause otherwise/).waitFor()
    expect(await violationsOn(phone)).toEqual([])
  })
})

/** What sends entries and photos to the server. */
const sending = /\/api\/(entries|bay\/parcels|photos)/

/** Takes a photo by touch: the finger opens the camera, which gives back this file. */
const photograph = async (file: Buffer): Promise<void> => {
  const [camera] = await Promise.all([bay.waitForEvent('filechooser'), tap(bay.locator('.camera-input'))])
  await camera.setFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer: file })
}

/** Whether the page has loaded the picture with these words in its place. */
const isDrawn = async (page: Page, words: RegExp): Promise<boolean> => {
  const picture = page.getByRole('img', { name: words })
  await picture.waitFor()
  await picture.scrollIntoViewIfNeeded()
  await expect
    .poll(() => picture.evaluate((shown) => (shown as HTMLImageElement).naturalWidth))
    .toBeGreaterThan(100)
  return true
}

describe('a photo from the bay', () => {
  beforeAll(async () => {
    await bay.goto('/bay')
    await takeForArrival(bay, photographed.plate)
  })

  it('is kept without a network, and sent without place or camera once there is one', async () => {
    onTestFailed(() => browser().picture('out'))
    await allSent(bay)
    await bay.route(sending, (route) => route.abort())
    const file = await drawnJpeg({ width: 3_000, height: 2_000, withPlace: true })
    expect(await pictureFacts(file)).toMatchObject({ width: 3_000, hasCameraData: true })
    await photograph(file)
    await bay.getByText('Photos not yet sent: 1').waitFor()
    await bay.getByLabel('Photo · 1').waitFor()
    await expect.poll(() => keptParcels(bay)).toBe(1)
    // Off and on again: the tablet still holds it.
    await bay.reload()
    await bay.getByText('Photos not yet sent: 1').waitFor()
    await tap(button(bay, 'Photos (1)'))
    await isDrawn(bay, /^Photo of the vehicle/)
    await tap(button(bay, 'Back to the step'))

    await bay.unroute(sending)
    await bay.getByText(/Photos not yet sent/).waitFor({ state: 'detached', timeout: 40_000 })
    const received = (await receivedPhotos(database)).at(-1)
    expect(await pictureFacts(received ?? new Uint8Array())).toEqual({
      format: 'jpeg',
      width: 2_560,
      height: 1_707,
      hasCameraData: false,
    })
  })

  it('of what is not right goes with it, and the desk shows it to the customer by the keyboard', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(button(bay, 'Not right', true))
    await shows(bay, 'What is not right?')
    await photograph(await drawnJpeg({ width: 1_000, height: 750 }))
    await bay.getByText('1 photo goes with it').waitFor()
    await tap(button(bay, 'left front', true))
    await tap(button(bay, 'A stud or bolt is damaged'))
    await tap(button(bay, 'Park the left front wheel'))
    await bay.getByText(/The left front wheel is parked/).waitFor()

    await openOrder(desk, photographed.customer)
    const words = /^Photo of left front, what is not right, \d{1,2}:\d\d.[AP]M$/
    await isDrawn(desk, words)
    await desk.getByRole('button', { name: /^Show to the customer: Photo of left front/ }).focus()
    await desk.keyboard.press('Enter')
    await desk.getByText('The customer sees it.').waitFor()
    const link = await browser().desk.customerLink(photographed.orderId)
    const phone = await browser().open('customer', link)
    await isDrawn(phone, words)
    expect(await phone.getByRole('img', { name: /^Photo of the vehicle/ }).count()).toBe(0)
  })

  /** Answers for a full disk as the browser does; a quota that is set from outside counts only after a while. */
  const fillStorage = () =>
    bay.evaluate(() => {
      const { put, add } = IDBObjectStore.prototype
      const full = (): never => {
        throw new DOMException('The disk is full.', 'QuotaExceededError')
      }
      Object.assign(IDBObjectStore.prototype, { put: full, add: full })
      Object.assign(globalThis, {
        makeRoom: () => void Object.assign(IDBObjectStore.prototype, { put, add }),
      })
    })

  it('that is no picture, or that the tablet has no room for, is refused in words and writes nothing', async () => {
    onTestFailed(() => browser().picture('out'))
    await photograph(Buffer.from('no picture at all'))
    await bay.getByText('This file is not a photo that the tablet can read.').waitFor()
    await fillStorage()
    await photograph(await drawnJpeg({ width: 900, height: 700 }))
    await bay.getByText('This tablet has no room for the photo.').waitFor()
    await bay.evaluate('makeRoom()')
    await bay.getByRole('button', { name: 'Photos (2)' }).waitFor()
    expect(await bay.getByText(/ot yet sent/).count()).toBe(0)
  })
})
