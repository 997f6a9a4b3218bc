import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it, onTestFailed, vi } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { freeLinnet, freeMoor, otherLinnet } from '../support/free-vehicles.ts'
import { openOrderWriter } from '../support/order-in-flight.ts'
import { button, greta, heading, hold, ines, leaves, shows, type } from './support/bay.ts'
import { workFigures, workThrough } from './support/bay-steps.ts'
import { openBay, openDesk } from './support/begin.ts'
import { openOrder } from './support/desk.ts'
import { asDoer, withOtherToken, wrongPin } from './support/second-person.ts'
import { setStage } from './support/stage.ts'
import { tap } from './support/touch.ts'

/** An order whose customer saw the bulge and declined the work: the refusal is still to be recorded. */
let refusing = ''
/** An order that is to be paid, and whose relearn the customer drives: the cure is not proven yet. */
let releasing = ''
/** An order whose wheels are torqued; the second check is to be sealed. */
let torqued = ''
const browser = setStage(null, async ({ serviceUrl }) => {
  const writer = await openOrderWriter(serviceUrl)
  refusing = await writer.write(
    { ...freeMoor, number: 'T-2614' },
    ({ draft }) => draft.kind === 'refusal.recorded',
  )
  releasing = await writer.write(
    { ...freeLinnet, number: 'T-2605' },
    ({ draft }) => draft.kind === 'payment.noted',
  )
  torqued = await writer.write(
    { ...otherLinnet, number: 'T-2603' },
    ({ draft }) => draft.kind === 'sensor.programmed',
  )
  await writer.workOn(torqued, ({ closedBy }) => closedBy === 'torque.checked')
  await writer.close()
})

/** A demo vehicle whose right rear wheel is off. */
const vehicle = 'S. Achterberg'
const unproven = /This needs the PIN of the person who confirms it/
const pinIsWrong = /The PIN is wrong/

const ottoline = people.ottoline
const devin = people.devin
const doerRefused = /The second person must be somebody else/

let desk: Page
let bay: Page
beforeAll(async () => {
  desk = await openDesk(browser())
  bay = await openBay(browser())
})

/** The kinds of what the ledger holds of the order on the screen. */
const entries = async (page: Page): Promise<string[]> => {
  const orderId = /[0-9a-f-]{36}/.exec(page.url())?.[0] ?? ''
  return (await browser().desk.entriesOf(orderId)).map(({ kind }) => kind)
}

/** Types a PIN at the desk by keyboard and presses a button by keyboard. */
const agree = async (page: Page, pin: string, name: string) => {
  const field = page.getByLabel(/^PIN of/)
  await field.focus()
  await page.keyboard.press('ControlOrMeta+a')
  await page.keyboard.type(pin)
  await button(page, name).focus()
  await page.keyboard.press('Enter')
}
const namesIn = (page: Page, label: string): Promise<string[]> =>
  page.getByLabel(label).locator('option').allTextContents()

describe('at the desk, a second person', () => {
  it('witnesses a refusal with a PIN: wrong, of another step, and then right', async () => {
    onTestFailed(() => browser().picture('out'))
    await desk.goto(`/desk/orders/${refusing}`)
    await button(desk, /refuses/)
      .first()
      .click()
    await desk.getByRole('radio', { name: 'As it is' }).check()
    const label = 'Will not sign: who witnesses it?'
    expect(await namesIn(desk, label)).not.toContain(ottoline.name)
    await desk.getByLabel(label).selectOption({ label: devin.name })
    const before = await entries(desk)
    await agree(desk, wrongPin, 'Record the refusal')
    await desk.getByText(pinIsWrong).waitFor()
    await asDoer(desk, ottoline.id, () => agree(desk, ottoline.pin, 'Record the refusal'))
    await desk.getByText(doerRefused).waitFor()
    await withOtherToken(desk, () => agree(desk, devin.pin, 'Record the refusal'))
    await desk.getByText(unproven).waitFor()
    expect(await entries(desk)).toEqual(before)
    expect(await desk.getByRole('radio', { name: 'As it is' }).isChecked()).toBe(true)
    await agree(desk, devin.pin, 'Record the refusal')
    await button(desk, 'Record the refusal').waitFor({ state: 'detached' })
    expect((await entries(desk)).filter((kind) => kind === 'refusal.recorded')).toHaveLength(1)
  })

  it('agrees to a release before the cure is proven', async () => {
    onTestFailed(() => browser().picture('out'))
    await desk.goto(`/desk/orders/${releasing}`)
    await desk.getByRole('radio', { name: 'card', exact: true }).check()
    await button(desk, 'Note the payment').click()
    await button(desk, 'Yes, note it').click()
    await desk.getByText('Nothing is owed.').waitFor()
    await button(desk, 'Seal the report').click()
    await desk.getByRole('link', { name: /Sealed report/ }).waitFor({ timeout: 60_000 })
    await desk.getByLabel('Odometer at hand-back').fill('47390')
    const label = 'The cure is not proven yet: who agreed to the release?'
    expect(await namesIn(desk, label)).not.toContain(ottoline.name)
    await desk.getByLabel(label).selectOption({ label: greta.name })
    await agree(desk, wrongPin, 'Hand back the vehicle')
    await desk.getByText(pinIsWrong).waitFor()
    await asDoer(desk, ottoline.id, () => agree(desk, ottoline.pin, 'Hand back the vehicle'))
    await desk.getByText(doerRefused).waitFor()
    await withOtherToken(desk, () => agree(desk, greta.pin, 'Hand back the vehicle'))
    await desk.getByText(unproven).waitFor()
    expect(await desk.getByLabel('Odometer at hand-back').inputValue()).toMatch(/47,?390/)
    await agree(desk, greta.pin, 'Hand back the vehicle')
    await desk.getByText(/Handed back (at|on)/).waitFor()
    expect((await entries(desk)).filter((kind) => kind === 'order.handed_back')).toHaveLength(1)
  })

  it('agrees that a wheel never came off', async () => {
    onTestFailed(() => browser().picture('out'))
    await openOrder(desk, vehicle)
    await button(desk, /Withdraw entry \d+, Wheel off/).click()
    await desk.getByLabel('Reason').selectOption({ label: 'Recorded at the wrong wheel' })
    await desk.getByLabel('In words').fill('It was the left rear.')
    const label = 'Second person who agrees'
    expect(await namesIn(desk, label)).not.toContain(ottoline.name)
    await desk.getByLabel(label).selectOption({ label: greta.name })
    const before = await entries(desk)
    await agree(desk, wrongPin, 'Withdraw it')
    await desk.getByText(pinIsWrong).waitFor()
    await asDoer(desk, ottoline.id, () => agree(desk, ottoline.pin, 'Withdraw it'))
    await desk.getByText(doerRefused).waitFor()
    await withOtherToken(desk, () => agree(desk, greta.pin, 'Withdraw it'))
    await desk.getByText(unproven).waitFor()
    expect(await entries(desk)).toEqual(before)
    expect(await desk.getByLabel('In words').inputValue()).toBe('It was the left rear.')
    await agree(desk, greta.pin, 'Withdraw it')
    await button(desk, 'Withdraw it').waitFor({ state: 'detached' })
    await desk.getByText('It was the left rear.').waitFor()
  })
})

describe('in the bay, by finger, a second person', () => {
  const pinRefused = () => bay.getByText(pinIsWrong).first()
  const notProven = () => bay.getByText(unproven).first()

  it('agrees that a wheel did not come off', async () => {
    onTestFailed(() => browser().picture('out'))
    await tap(bay.getByRole('link', { name: new RegExp(vehicle) }))
    await leaves(bay, 'My vehicles')
    await workThrough(bay, workFigures, /^Let the air off/)
    await tap(button(bay, 'History', true))
    const wheelOff = () => button(bay, /^Withdraw \d+: Wheel off/).first()
    await tap(wheelOff())
    await tap(button(bay, /^Was not done/))
    await tap(button(bay, 'Go on: second person'))
    await button(bay, greta.name, true).waitFor()
    expect(await button(bay, ines.name, true).count()).toBe(0)
    await tap(button(bay, greta.name, true))
    const before = await entries(bay)
    await type(bay, wrongPin)
    await pinRefused().waitFor()
    await withOtherToken(bay, () => type(bay, greta.pin))
    await notProven().waitFor()
    expect(await entries(bay)).toEqual(before)
    // The screen went on at once; the tray says why nothing was withdrawn. The reason is still there.
    await shows(bay, 'History')
    await tap(button(bay, 'Write it again'))
    await tap(wheelOff())
    await tap(button(bay, 'Go on: second person'))
    await tap(button(bay, greta.name, true))
    await type(bay, greta.pin)
    await shows(bay, 'History')
    await vi.waitFor(async () => expect((await entries(bay))[before.length]).toBe('entry.struck'), 20_000)
    await tap(button(bay, 'Back to the step'))
    await leaves(bay, 'History')
  })

  it('seals the torque check that they made', async () => {
    onTestFailed(() => browser().picture('out'))
    await bay.goto(`/bay/orders/${torqued}`)
    await tap(button(bay, 'Job plan'))
    await tap(button(bay, /^Second person checks/).first())
    await tap(button(bay, /^W-07/))
    await shows(bay, /^Second person checks/)
    const title = (await heading(bay).textContent()) ?? ''
    await hold(bay, /hold to seal/)
    await button(bay, greta.name, true).waitFor()
    expect(await button(bay, ines.name, true).count()).toBe(0)
    await tap(button(bay, greta.name, true))
    const before = await entries(bay)
    await type(bay, wrongPin)
    await pinRefused().waitFor()
    await withOtherToken(bay, () => type(bay, greta.pin))
    await notProven().waitFor()
    expect(await entries(bay)).toEqual(before)
    await tap(button(bay, 'Write it again'))
    await hold(bay, /hold to seal/)
    await tap(button(bay, greta.name, true))
    await type(bay, greta.pin)
    await leaves(bay, title)
    await vi.waitFor(async () => expect(await entries(bay)).toContain('torque.checked'), 20_000)
  })
})
