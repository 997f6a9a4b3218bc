import type { FaultOrder } from './fault-shop.ts'
import type { FaultTablet } from './fault-tablet.ts'
import type { QuickHand } from './quick-hand.ts'
import type { Says, Tap } from './taps.ts'

/** What a person may do at a tablet in a round. */
export const doings = [
  'gauge',
  'undo',
  'light',
  'outdoors',
  'tire',
  'not-right',
  'withdraw',
  'step',
  'take',
] as const
export type Doing = (typeof doings)[number]

const names = ['left front', 'right front', 'right rear', 'left rear'] as const
export type WheelName = (typeof names)[number]
export const wheelNames: readonly WheelName[] = names

/** What is done where, and with which figure: each figure of a round is its own, so that it is found again. */
export type Errand = {
  readonly doing: Doing
  readonly order: FaultOrder
  readonly wheel: WheelName
  /** 200 to 699: tenths of a psi, or tenths of a degree. */
  readonly tenths: number
}

/** Brings the order's screen up; false where that is not possible now. */
export const visit = async (hand: QuickHand, { orderId }: FaultOrder): Promise<boolean> => {
  if (hand.page.url().endsWith(orderId)) return hand.comes('.plan-button', 3_000)
  if (!(await hand.isShown('.my-vehicles')) && !(await hand.press('My vehicles', 2_000))) return false
  const row = `a[href$="${orderId}"]`
  if (!(await hand.pressAt(row, 2_000))) {
    // It waits for somebody else just now, and is one tap away.
    if (!(await hand.press(/^Waiting elsewhere/, 200)) || !(await hand.pressAt(row, 1_000))) return false
  }
  // A list that moves under the finger opens another one.
  return (await hand.comes('.plan-button', 3_000)) && hand.page.url().endsWith(orderId)
}

/** Does it by touch; gives what was tapped: nothing where the screen does not offer it now. */
export const doErrand = async (tablet: FaultTablet, errand: Errand): Promise<readonly Tap[]> => {
  const hand = tablet.hand()
  if (errand.doing === 'take') return take(tablet, errand)
  if (!(await visit(hand, errand.order))) return []
  const tapped: Tapped = (kind, says, isDone, withdraws) => [
    {
      staffId: tablet.person.id,
      orderId: errand.order.orderId,
      kind,
      says,
      isDone,
      ...(withdraws === undefined ? {} : { withdraws }),
    },
  ]
  return hands[errand.doing](hand, errand, tapped)
}

type Tapped = (kind: string, says: Says, isDone: boolean, withdraws?: Says) => readonly Tap[]
type Hand = (hand: QuickHand, errand: Errand, tapped: Tapped) => Promise<readonly Tap[]>

const pressure = (tenths: number): Says => ({ 'payload.gauge.pressure.value': tenths / 10 })

const gauge: Hand = async (hand, { wheel, tenths }, tapped) => {
  if (!(await openWheel(hand, wheel, 'Gauge'))) return []
  if ((await hand.title()).startsWith('Which gauge') && !(await hand.press(/GA-1/))) return []
  await forgetUndo(hand)
  if (!(await typeAfresh(hand, (tenths / 10).toFixed(1)))) return []
  return tapped('wheel.checked', pressure(tenths), await isKept(hand))
}

/** A reading, and at once its undoing, before or after the server has it. */
const undo: Hand = async (hand, errand, tapped) => {
  const read = await gauge(hand, errand, tapped)
  if (read[0]?.isDone !== true) return read
  if (!(await hand.pressAt('.bay-undo', 500))) return read
  // Within ten seconds the offer goes only when the withdrawal is done.
  const isDone = await goes(hand, '.bay-undo', 2_500)
  return [...read, ...tapped('entry.struck', { 'payload.reason': 'undone' }, isDone, pressure(errand.tenths))]
}

const light: Hand = async (hand, _errand, tapped) => {
  if (!(await hand.press(/^Light /, 500))) return []
  await forgetUndo(hand)
  if (!(await hand.press(/^Lights at key-on/, 1_000))) return []
  if (!(await hand.press(/^Flashes, then solid/, 1_000))) return []
  return tapped('telltale.observed', { 'payload.phase': 'arrival' }, await isKept(hand))
}

const outdoors: Hand = async (hand, { tenths }, tapped) => {
  if (!(await hand.press(/^Outdoors/, 500))) return []
  if (!(await hand.pressAt('.row-cell', 1_000))) return []
  await forgetUndo(hand)
  if (!(await typeAfresh(hand, (tenths / 10).toFixed(1)))) return []
  if (await hand.press(/^Next/, 500)) await hand.press(/^Cold/, 1_000)
  if (!(await hand.press('Record the temperatures', 1_000))) return []
  const says = { 'payload.surroundings.outdoor.value': tenths / 10 }
  return tapped('surroundings.recorded', says, await isKept(hand))
}

const tire: Hand = async (hand, { wheel }, tapped) => {
  if (!(await openWheel(hand, wheel, 'Tire'))) return []
  await forgetUndo(hand)
  if (!(await hand.press(/^All sound/, 1_000)) || !(await hand.press('7', 1_000))) return []
  return tapped('tire.inspected', { 'payload.wheel': shortOf(wheel) }, await isKept(hand))
}

const notRight: Hand = async (hand, { wheel }, tapped) => {
  if (!(await hand.press('Not right', 500)) || !(await hand.titled(/not right/, 1_000))) return []
  await forgetUndo(hand)
  // Where a wheel is at hand its name is in the title already.
  if ((await hand.title()) === 'What is not right?' && !(await hand.press(wheel, 1_000))) return []
  if (!(await hand.press(/^Something else/, 1_000))) return []
  await hand.press(/^No more to say/, 1_000)
  if (!(await hand.press(/^(Park the|Stop the work)/, 1_000))) return []
  return tapped('trouble.found', { 'payload.what': 'other' }, await isKept(hand))
}

/** The newest entry that may be withdrawn, whoever wrote it: two tablets may withdraw the same one. */
const withdraw: Hand = async (hand, _errand, tapped) => {
  if (!(await hand.press('History', 500))) return []
  if (!(await hand.press(/^Withdraw \d+: .*(psi|gauge)/i, 500))) {
    await hand.press(/^Back/, 500)
    return []
  }
  const isReady = (await hand.press(/^Wrong value/, 1_000)) && (await hand.press(/^No more to say/, 1_000))
  const isSent = isReady && (await hand.press('Withdraw it', 1_000))
  const isDone = isSent && (await hand.comes('.history', 4_000))
  if (!isDone) await hand.press('Keep it', 500)
  await hand.press(/^Back/, 500)
  return isSent ? tapped('entry.struck', { 'payload.reason': 'wrong-value' }, isDone) : []
}

/** Closes the next step of the plan, as far as no wheel comes off for it. */
const step: Hand = async (hand, _errand, tapped) => {
  const title = await hand.title()
  await forgetUndo(hand)
  if (/^Draw the sensor/.test(title)) {
    if (!(await hand.pressAt('.row-option', 1_000)) || !(await hand.press('Record the part', 1_000)))
      return []
    return tapped('part.drawn', {}, await isKept(hand))
  }
  if (/^Program/.test(title)) {
    if (!(await hand.press(/^A new ID/, 1_000)) || !(await hand.type('5D00AA01'))) return []
    if (!(await hand.press(/^Next/, 1_000)) || !(await hand.press(/MHz/, 1_000))) return []
    return tapped('sensor.programmed', {}, await isKept(hand))
  }
  if (!(await hand.press('Done', 200))) return []
  return tapped('step.closed', {}, await isKept(hand))
}

const hands: Readonly<Record<Exclude<Doing, 'take'>, Hand>> = {
  gauge,
  undo,
  light,
  outdoors,
  tire,
  'not-right': notRight,
  withdraw,
  step,
}

const take = async (tablet: FaultTablet, { order: { orderId } }: Errand): Promise<readonly Tap[]> => {
  const hand = tablet.hand()
  if (!(await hand.isShown('.my-vehicles')) && !(await hand.press('My vehicles', 1_000))) return []
  const button = `li:has(a[href$="${orderId}"]) > button`
  await forgetUndo(hand)
  if (!(await hand.pressAt(button, 500))) return []
  const isDone = (await hand.comes('.plan-button', 3_000)) && (await isKept(hand))
  const { id: staffId } = tablet.person
  return [{ staffId, orderId, kind: 'order.assigned', says: { 'payload.staffId': staffId }, isDone }]
}

const shortOf = (wheel: WheelName): string =>
  ({ 'left front': 'LF', 'right front': 'RF', 'right rear': 'RR', 'left rear': 'LR' })[wheel]

const openWheel = async (hand: QuickHand, wheel: WheelName, part: 'Gauge' | 'Tire'): Promise<boolean> => {
  if (!(await hand.pressAt(`.plan-button[aria-label^="${wheel}"]`, 1_000))) return false
  if (!(await hand.titled(new RegExp(`the ${wheel}|^Which gauge`), 1_000))) return false
  const wanted = part === 'Gauge' ? /^(Gauge the|Which gauge)/ : /^Look at the/
  return wanted.test(await hand.title()) || (await hand.press(part, 1_000))
}

/** What stood in the readout before, after a refusal or a power cut, is cleared first. */
const typeAfresh = async (hand: QuickHand, figure: string): Promise<boolean> => {
  if (!(await hand.comes('.pad-entry', 1_000))) return false
  const before = await hand.page.evaluate(() => document.querySelector<HTMLInputElement>('.pad-entry')?.value)
  if (before !== '' && !(await hand.press('clear', 500))) return false
  return hand.type(figure)
}

/** Marks the offer to undo what was written before, so that a new one is told from it. */
export const forgetUndo = (hand: QuickHand): Promise<void> =>
  hand.page.evaluate(() => document.querySelector('.bay-undo')?.setAttribute('data-seen', ''))

/** The offer to undo says that the tablet holds the entry. */
export const isKept = (hand: QuickHand): Promise<boolean> => hand.comes('.bay-undo:not([data-seen])')

const goes = async (hand: QuickHand, selector: string, milliseconds: number): Promise<boolean> => {
  try {
    await hand.page.locator(selector).waitFor({ state: 'detached', timeout: milliseconds })
    return true
  } catch {
    return false
  }
}
