import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it, onTestFailed, onTestFinished } from 'vitest'
import { startBrowser, type TestBrowser } from '../support/browser.ts'
import { createTestDatabase } from '../support/database.ts'
import { cornerTire } from '../support/first-shop.ts'
import { startServiceHere } from '../support/service-here.ts'
import { violationsOn } from './support/accessible.ts'
import { button, enroll, leaves, shows, signIn, type } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { addInstruments, addTechnician, fillFirstPage, pell, savePrices } from './support/open-shop.ts'
import { byKeyboard, byTouch, type OwnerHand } from './support/owner-hand.ts'
import { tap } from './support/touch.ts'

const { owner } = cornerTire
const vehicle = 'Dorrin Wicket hatch 2024'
const plate = 'WKT-2024'

/** The service on a database that holds nothing, and a browser before it. */
type EmptyShop = { readonly browser: TestBrowser; readonly stop: () => Promise<void> }
const startEmptyShop = async (minutesBehind: number | null = null): Promise<EmptyShop> => {
  const data = mkdtempSync(join(tmpdir(), 'bayledger-owner-'))
  const database = await createTestDatabase('empty')
  const addresses = { ownerUrl: database.url, serviceUrl: database.serviceUrl }
  const service = await startServiceHere(addresses, data, 'none')
  const browser = startBrowser(service.address, minutesBehind)
  return {
    browser,
    stop: async () => {
      await browser.close()
      await service.stop()
      await database.drop()
      rmSync(data, { recursive: true, force: true })
    },
  }
}

const names = ['left front', 'right front', 'right rear', 'left rear'] as const

/** An owner with an empty database, from the first page to the first sealed report: the desk by keys alone, the bay by touch. */
describe('an owner with an empty database', () => {
  let shop: EmptyShop
  let browser: TestBrowser
  let desk: Page
  let hand: OwnerHand
  let bay: Page
  beforeAll(async () => {
    shop = await startEmptyShop(30)
    browser = shop.browser
    desk = await browser.open('desk', '/desk')
    hand = byKeyboard(desk)
  })
  afterAll(() => shop?.stop())
  const heading = (name: string | RegExp) => desk.getByRole('heading', { name })

  it('makes the shop on the page that opens by itself', async () => {
    await heading('Make your shop').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await fillFirstPage(hand, '123456')
    await desk.getByText(/count up or down are guessed at once/).waitFor()
    expect(await desk.evaluate(() => document.activeElement?.closest('.field')?.textContent)).toMatch(/^PIN/)
    await hand.type('PIN', owner.pin)
    await hand.type('PIN again', owner.pin)
    await desk.keyboard.press('Enter')
    await heading('Checklist').waitFor()
  })

  it('reads what the shop still needs and what stays shut without it', async () => {
    await desk.getByText('5 of 5 left.').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    for (const name of ['People', 'Wrenches and gauges', 'Prices', 'A tablet', 'Backups'])
      await heading(`${name}: not yet`).waitFor()
    await desk.getByText(/arrival check stays shut/).waitFor()
  })

  it('fills the checklist: a technician with a PIN, a wrench, a gauge, prices', async () => {
    onTestFailed(() => browser.picture('out'))
    await addTechnician(hand, pell)
    await desk.getByText('PIN set: never → once').waitFor()
    expect(await violationsOn(desk)).toEqual([])
    await addInstruments(hand)
    await savePrices(hand)
    expect(await violationsOn(desk)).toEqual([])
    await hand.press('Checklist')
    await desk.getByText(/Now: 2 people, 1 technician or lead with a PIN/).waitFor()
    await heading('Wrenches and gauges: there').waitFor()
    await heading('Prices: there').waitFor()
  })

  it('adds a tablet, on which the technician signs in', async () => {
    await hand.press('Add a tablet')
    await heading('Add a tablet').waitFor()
    await desk.getByText(/works on this machine only/).waitFor()
    await hand.press('New code for Corner Street')
    const code = (await desk.locator('.desk-code .exact').textContent()) ?? ''
    bay = await browser.open('bay', '/bay/enroll')
    await enroll(bay, code)
    await signIn(bay, pell)
  })

  it('opens the first order, of a vehicle of which nothing is known', async () => {
    await hand.press('Write up a complaint')
    await heading('Write up a complaint').waitFor()
    await hand.type('Customer’s name', 'L. Amberly')
    await hand.type('Plate', plate)
    await hand.type('Make, model and year', vehicle)
    await hand.press('No sheet of this kind: begin a blank one')
    await hand.type('The complaint, in the customer’s own words', 'The tire light came on this morning.')
    await hand.press('Stays on')
    await hand.press('I asked for each of these by name')
    await hand.press('Waits here')
    await hand.type('Odometer', '50000')
    for (const answer of [
      'charged with or without work',
      'Inspecting every wheel',
      'A proof drive',
      'The owner',
      'Open the order',
    ])
      await hand.press(answer)
    await heading(/L\. Amberly/).waitFor()
    expect(await desk.locator('.order-head').textContent()).toContain('T-')
    expect(await violationsOn(desk)).toEqual([])
  })

  it('has the sheet written and the vehicle checked in the bay', async () => {
    onTestFailed(() => browser.picture('out'))
    await tap(button(bay, `Take it: ${plate}`))
    await typeLabel(bay)
    await tap(button(bay, /^without sensors/))
    await tap(button(bay, 'Enter it on the sheet'))
    await checkColdTires(bay)
    await shows(bay, /No cause found so far/)
    await tap(button(bay, /^Check next: Photograph the door label/))
    await button(bay, 'Second person: confirm it').waitFor()
    await tap(button(bay, /Change person/))
    await signIn(bay, owner)
    await tap(button(bay, 'Verify it for every such vehicle'))
    await tap(button(bay, owner.name, true))
    await type(bay, owner.pin)
    await tap(button(bay, /Change person/))
    await signIn(bay, pell)
    await shows(bay, /readings say/)
    await tap(button(bay, 'I agree: confirm the findings'))
    await shows(bay, 'Nothing for the bay now')
  })

  it('gets a price, and a yes by telephone', async () => {
    onTestFailed(() => browser.picture('out'))
    await hand.press('Issue this estimate')
    await hand.press('Decide by telephone')
    await heading('Consent by telephone').waitFor()
    await hand.press('Yes')
    await hand.press('The owner')
    await hand.type('Number called', '555 0142')
    await hand.type('The answer, in their words', 'Go ahead.')
    await hand.press('Record the decision')
    await leaves(bay, 'Nothing for the bay now')
  })

  it('has the procedure of learning entered at the step that lacks it, and verified by the owner', async () => {
    onTestFailed(() => browser.picture('out'))
    const done = await workThrough(bay, { ...workFigures, by: pell }, /^Tell the vehicle/)
    await bay.getByText(/The sheet has no procedure/).waitFor()
    await tap(button(bay, /^Procedure not entered yet/))
    await typeProcedure(bay)
    await shows(bay, 'Figures of this kind of vehicle')
    await bay.getByText(/entered, not verified; maker manual, page 212/).waitFor()
    expect(await violationsOn(bay)).toEqual([])
    await tap(button(bay, 'Verify: Learning'))
    await tap(button(bay, owner.name, true))
    await type(bay, owner.pin)
    await bay.getByText(/verified by a second person; maker manual, page 212/).waitFor()
    await tap(button(bay, 'Back to the step'))
    await bay.getByText(/Hold SET with the key on\./).waitFor()
    expect(done.filter((title) => title.startsWith('Set the pressure'))).toHaveLength(4)
  })

  it('is worked on in the bay until nothing is left', async () => {
    onTestFailed(() => browser.picture('out'))
    await workThrough(bay, { ...workFigures, by: pell })
  })

  it('ends with the payment, the sealed report and the keys', async () => {
    onTestFailed(() => browser.picture('out'))
    await hand.press('card')
    await hand.press('Note the payment')
    await hand.press('Yes, note it')
    await desk.getByText('Nothing is owed.').waitFor()
    await hand.press('Seal the report')
    await desk.getByRole('link', { name: /Sealed report/ }).waitFor()
    await hand.type('Odometer at hand-back', workFigures.odometerIn)
    await hand.press('Hand back the vehicle')
    await desk.getByText(/Handed back (at|on)/).waitFor()
  })

  it('finds the sheet again for the next vehicle of the kind, and offers it for a similar one', async () => {
    await hand.press('Write up a complaint')
    await hand.type('Make, model and year', 'Dorrin Wicket wagon 2024')
    await button(desk, `Is it a ${vehicle}`).waitFor()
    const { sheets } = await desk.evaluate(async () =>
      (await fetch('/api/sheets', { headers: { 'bayledger-face': 'desk' } })).json(),
    )
    expect(sheets).toEqual([
      expect.objectContaining({
        name: vehicle,
        system: 'indirect',
        studs: 'missing',
        placard: expect.objectContaining({
          front: { psi: 33.4, kPa: null, typed: { value: 2.3, unit: 'bar' } },
        }),
        sources: expect.objectContaining({
          placard: expect.objectContaining({ enteredBy: expect.any(String), verifiedBy: expect.any(String) }),
        }),
      }),
    ])
    expect(await violationsOn(desk)).toEqual([])
  })

  it('finds the first page gone afterwards', async () => {
    const page = await browser.open('desk', '/desk/first-shop')
    await page.getByText('The shop is made.').waitFor()
    expect(await page.getByRole('link', { name: 'Sign in at the desk' }).isVisible()).toBe(true)
    expect(await violationsOn(page)).toEqual([])
    await page.close()
    expect(browser.noise.filter((line) => !/401/.test(line))).toEqual([])
  })
})

/** The same setup by a finger, on a tablet that is held upright. */
describe('an owner with an empty database and a tablet', () => {
  it('makes the shop and fills the checklist by touch alone', async () => {
    const { browser, stop } = await startEmptyShop()
    onTestFinished(stop)
    const page = await browser.open('bay', '/desk')
    await page.setViewportSize({ width: 768, height: 1024 })
    const hand = byTouch(page)
    await fillFirstPage(hand, owner.pin)
    await page.getByText('5 of 5 left.').waitFor()
    await addTechnician(hand, pell)
    await addInstruments(hand)
    await savePrices(hand)
    await hand.press('Add a tablet')
    await hand.press('New code for Corner Street')
    await page.locator('.desk-code .exact').waitFor()
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0)
    expect(await violationsOn(page)).toEqual([])
  })
})

const typed = async (page: Page, text: string): Promise<void> => {
  await page.locator('.bay-pad').getByRole('textbox').fill(text)
  await tap(button(page, /^Next/))
}

/** The label in the door of a vehicle without a spare, as it is read there. */
const typeLabel = async (bay: Page): Promise<void> => {
  await shows(bay, 'Type the label in the door')
  expect(await violationsOn(bay)).toEqual([])
  await tap(button(bay, 'bar, no psi'))
  for (const bar of ['2.3', '2.3']) {
    await type(bay, bar)
    await tap(button(bay, /^Next/))
  }
  await tap(button(bay, /^no spare/))
  await typed(bay, '205/55R16 91V')
  await tap(button(bay, 'SL', true))
  await type(bay, '51')
  await tap(button(bay, /^Next/))
  await tap(button(bay, /^as the front/))
  await tap(button(bay, /^placard photo/))
  await tap(button(bay, /^Label in the driver/))
  await tap(button(bay, 'Enter it on the sheet'))
  await shows(bay, 'Enter what the vehicle listens to')
}

/** How the vehicle is told of its tires, as its handbook prints it. */
const typeProcedure = async (bay: Page): Promise<void> => {
  await shows(bay, 'Enter how the vehicle learns')
  expect(await violationsOn(bay)).toEqual([])
  await tap(button(bay, /^By reset/))
  for (const words of ['Hold SET with the key on.', 'It shows SET.', 'Key off.']) await typed(bay, words)
  await tap(button(bay, 'not printed'))
  await tap(button(bay, 'nothing known'))
  await tap(button(bay, /^maker manual/))
  await bay.locator('.bay-pad').getByRole('textbox').fill('page 212')
  await tap(button(bay, 'Enter it on the sheet'))
}

/** All four low alike, on a cold morning; the light is on and nothing else is wrong. */
const checkColdTires = async (bay: Page): Promise<void> => {
  await shows(bay, 'Note the temperatures')
  await type(bay, '27')
  await tap(button(bay, /^Next/))
  await tap(button(bay, /^Cold/))
  await tap(button(bay, 'Record the temperatures'))
  await shows(bay, 'Watch the warning light')
  await tap(button(bay, /^Lights at key-on/))
  await tap(button(bay, /^Solid/))
  await shows(bay, /Which gauge/)
  await tap(button(bay, /GA-1/))
  for (const name of names) {
    await shows(bay, `Gauge the ${name} tire`)
    await type(bay, '24.0')
  }
  for (const name of names) {
    await shows(bay, `Look at the ${name} tire`)
    await tap(button(bay, /^All sound/))
    await tap(button(bay, '7', true))
  }
}
