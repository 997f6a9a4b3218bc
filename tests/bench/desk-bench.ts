import type { Page } from 'playwright-core'
import { signInAtDesk } from '../journeys/support/desk.ts'
import { callDesk } from '../journeys/support/desk-calls.ts'
import { startBrowser, type TestBrowser } from '../support/browser.ts'
import { openOrderWriter } from '../support/order-in-flight.ts'
import { type KeyHand, keyHandOf } from './key-hand.ts'
import type { RunningShop } from './running-shop.ts'
import type { Figure } from './table.ts'

const complaint = 'The tire light blinks for about a minute when I start it, then it stays on.'
const caller = 'Philippa Grant-Osei'

/**
 * A write-up by keyboard through the real screens, of a vehicle on file and of a new customer with a new vehicle, and an answer to
 * an estimate at the desk, by telephone and on the customer's phone: seconds of a hand by the keystroke-level model, with what
 * the screens take to answer as it was measured. What is said and read meanwhile is not in them.
 */
export const benchDesk = async (shop: RunningShop): Promise<Figure[]> => {
  const browser = startBrowser(shop.address)
  const writer = await openOrderWriter(shop.serviceUrl)
  try {
    const desk = await browser.open('desk', '/desk/sign-in')
    await signInAtDesk(desk, 'ottoline', 'brindle-falls-ottoline')
    const newOne = await writeUpNew(desk)
    const known = await writeUpKnown(desk)
    const waiting = () => writer.write({ number: 'T-2602' }, ({ draft }) => draft.kind === 'estimate.decided')
    const here = await decideAtDesk(desk, await waiting(), 'Decide here')
    const byTelephone = await decideAtDesk(desk, await waiting(), 'Decide by telephone')
    const onPhone = await decideOnPhone(browser, await callDesk(shop.address).customerLink(await waiting()))
    return [
      { name: 'desk.hand.write-up-known.s', value: known, unit: 's', goal: 90 },
      { name: 'desk.hand.write-up-new.s', value: newOne, unit: 's', goal: 180 },
      { name: 'desk.hand.consent-here.s', value: here, unit: 's', goal: null },
      { name: 'desk.hand.consent-telephone.s', value: byTelephone, unit: 's', goal: null },
      { name: 'customer.hand.consent-link.s', value: onPhone, unit: 's', goal: 60 },
    ]
  } finally {
    await writer.close()
    await browser.close()
  }
}

/** Found by its plate; another key begins a write-up that knows customer, vehicle and sheet. */
const writeUpKnown = async (desk: Page): Promise<number> => {
  const hand = keyHandOf(desk)
  await desk.goto('/desk')
  await desk.getByRole('complementary', { name: 'Floor list' }).getByRole('link').first().waitFor()
  hand.think()
  await hand.press('/')
  await hand.type('TMB 4127')
  await hand.await(desk.getByRole('option', { name: /TMB 4127/ }))
  await hand.press('Shift+Enter')
  await hand.await(desk.getByRole('button', { name: 'Another vehicle' }))
  await complaintAndConsent(desk, hand, '52900')
  return hand.seconds()
}

const writeUpNew = async (desk: Page): Promise<number> => {
  const hand = keyHandOf(desk)
  const field = (label: string) => desk.getByLabel(label, { exact: true })
  hand.think()
  await hand.go(desk.getByRole('link', { name: 'Write up a complaint' }).first())
  await hand.await(field('Customer’s name'))
  for (const [label, text] of [
    ['Customer’s name', caller],
    ['Telephone', '(555) 555-0188'],
    ['E-mail', 'philippa@customers.example'],
  ] as const) {
    hand.think()
    await hand.reach(field(label))
    await hand.type(text)
  }
  hand.think()
  await hand.choose(field('may be called'))
  await hand.choose(field('may be e-mailed'))
  await hand.choose(field('the torque check'))
  for (const [label, text] of [
    ['Plate', 'KLM 4471'],
    ['Make, model and year', 'Kestwick Moor utility 2012'],
    ['Color', 'blue'],
  ] as const) {
    hand.think()
    await hand.reach(field(label))
    await hand.type(text)
  }
  hand.think()
  await hand.go(desk.getByRole('button', { name: /^Is it a Kestwick Moor/ }))
  await complaintAndConsent(desk, hand, '88100')
  return hand.seconds()
}

/** From the customer's words to the open order; each field is thought of once. */
const complaintAndConsent = async (desk: Page, hand: KeyHand, odometer: string): Promise<void> => {
  const field = (label: string | RegExp) => desk.getByLabel(label, { exact: typeof label === 'string' })
  hand.think()
  await hand.reach(field('The complaint, in the customer’s own words'))
  await hand.type(complaint)
  for (const label of [
    'Flashes for about a minute, then stays on',
    /I asked for each of these by name/,
    'Leaves the vehicle',
  ]) {
    hand.think()
    await hand.choose(field(label))
  }
  hand.think()
  await hand.reach(field('Odometer'))
  await hand.type(odometer)
  const place = field('Tamber Street')
  if (!(await place.isChecked())) await hand.choose(place)
  for (const label of [
    /charged with or without work/,
    'Inspecting every wheel and the vehicle',
    'A proof drive of up to 30 minutes',
    'The owner',
  ]) {
    hand.think()
    await hand.choose(field(label))
  }
  hand.think()
  await hand.go(desk.getByRole('button', { name: 'Open the order' }))
  await hand.await(desk.locator('.order-head'))
}

/** Yes to everything that is asked, by whoever owns the vehicle. */
const decideAtDesk = async (
  desk: Page,
  orderId: string,
  how: 'Decide here' | 'Decide by telephone',
): Promise<number> => {
  const hand = keyHandOf(desk)
  await desk.goto(`/desk/orders/${orderId}`)
  await desk.getByRole('button', { name: 'Note the answer' }).waitFor()
  hand.think()
  await hand.go(desk.getByRole('button', { name: 'Note the answer' }))
  hand.think()
  await hand.go(desk.getByRole('button', { name: how }))
  const dialog = desk.getByRole('dialog')
  await hand.await(dialog)
  for (const yes of await dialog.getByRole('radio', { name: 'Yes', exact: true }).all()) {
    hand.think()
    await hand.choose(yes)
  }
  hand.think()
  await hand.choose(dialog.getByLabel('The owner', { exact: true }))
  hand.think()
  if (how === 'Decide here') await hand.sign(dialog.getByRole('img', { name: /signature/ }))
  else {
    await hand.reach(dialog.getByLabel('The answer, in their words'))
    await hand.type('Yes, go ahead with it.')
  }
  hand.think()
  await hand.go(dialog.getByRole('button', { name: 'Record the decision' }))
  await hand.await(dialog, 'detached')
  return hand.seconds()
}

const decideOnPhone = async (browser: TestBrowser, link: string): Promise<number> => {
  const phone = await browser.open('customer', link)
  const hand = keyHandOf(phone)
  await phone.getByRole('radio', { name: 'Yes', exact: true }).first().waitFor()
  for (const yes of await phone.getByRole('radio', { name: 'Yes', exact: true }).all()) {
    hand.think()
    await hand.touch(yes)
  }
  hand.think()
  await hand.touch(phone.getByLabel('The owner of this vehicle'))
  hand.think()
  await hand.touch(phone.getByLabel('Your name'))
  await hand.type('W. Dunmore-Gray')
  hand.think()
  await hand.sign(phone.getByRole('img', { name: 'Your signature' }))
  hand.think()
  await hand.touch(phone.getByLabel(/I agree to decide/))
  hand.think()
  await hand.touch(phone.getByRole('button', { name: 'Send my answer' }))
  await hand.await(phone.getByText(/Thank you. Your answer is recorded/))
  return hand.seconds()
}
