import { answerTo, isLook, unansweredBundles } from '@bayledger/ledger/questions/answers'
import { untoldStops } from '@bayledger/ledger/questions/dangers'
import { figureStanding } from '@bayledger/ledger/questions/figure-standing'
import { placardPsi } from '@bayledger/ledger/questions/gates'
import { authorizedCents } from '@bayledger/ledger/questions/money'
import type { OrderState } from '@bayledger/ledger/state'
import { figuresOf } from '@bayledger/reckoning/sheet'
import { readingOrder } from '@bayledger/reckoning/wheels'
import { findingSentences } from '@bayledger/wording/en/finding-sentences'
import { lights } from '@bayledger/wording/en/lights'
import { wheels } from '@bayledger/wording/en/wheels'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { sheetFigureNames } from '../../../features/sheets/figure-words.ts'
import type { ReadOrder } from '../../../ledger/order.ts'
import { pressureText } from '../../../lib/format.ts'
import { moneyWords } from '../../../lib/money-words.ts'
import { refusableStops } from './record-refusal.tsx'

/**
 * What each part of the order sheet comes to once nobody needs to touch it now: its line. `undefined` while somebody
 * does, and then the part is open.
 */
export const settledComplaint = (order: ReadOrder): string | undefined => {
  const { complaint, authority, diagnosis, sheet } = order.state
  if (complaint === null || authority.look === null || sheet === null || diagnosis === null) return undefined
  return `“${order.personalText(complaint.words)}”`
}

/** Once the findings are confirmed. */
export const settledArrival = ({ state }: ReadOrder): string | undefined => {
  if (!isConfirmed(state)) return undefined
  const gauged = readingOrder.flatMap((wheel) => {
    const pressure = state.arrival.wheels[wheel]?.gauge?.pressure
    return pressure === undefined ? [] : [`${wheel} ${pressureText(pressure)} ${pressure.unit}`]
  })
  const label = placardPsi(state, 'LF')
  const light = state.arrival.telltale?.behavior
  return [
    gauged.join(', '),
    label === null ? null : `label ${label}`,
    light === undefined || light === null ? null : `light: ${lights.does[light]}`,
  ]
    .filter((part) => part !== null && part !== '')
    .join(' · ')
}

/**
 * Which figures no second person has verified, for its kind or for this vehicle. The desk does nothing about them here, so that
 * the part is always a line: the bay asks for a figure at the step that needs it.
 */
export const settledFigures = ({ state }: ReadOrder): string | undefined => {
  const sheet = state.sheet?.sheet
  if (!sheet) return undefined
  const isSure = (standing: ReturnType<typeof figureStanding>) =>
    standing === null || standing.worth === 'verified' || standing.confirmed !== null
  const unsure = figuresOf(sheet).filter((figure) => !isSure(figureStanding(state, figure)))
  const named = unsure.map((figure) => sheetFigureNames[figure]).join(', ')
  return `${sheet.name}, version ${sheet.version} of its sheet. ${
    unsure.length === 0
      ? 'Every figure is verified by a second person.'
      : `Not verified by a second person: ${named}.`
  }`
}

/** Once the customer has answered what follows from them, and no stop is left to be told or refused. */
export const settledFindings = (order: ReadOrder): string | undefined => {
  const { state } = order
  const [primary] = state.diagnosis?.diagnosis.findings ?? []
  if (primary === undefined || !isAnswered(state)) return undefined
  const isSealed = state.reports.length > 0
  const isUntold = state.ended === null && untoldStops(state).length > 0
  if (!isSealed && (isUntold || refusableStops({ order }).length > 0)) return undefined
  return sentenceFor({ findingSentences, wheels }, primary)
}

/** Once the report is sealed: until then an answer may change, and a No keeps its caution in sight. */
export const settledEstimate = (order: ReadOrder): string | undefined => {
  const { state } = order
  if (state.reports.length === 0) return undefined
  const bundles = state.estimates.at(-1)?.scope.bundles.filter((bundle) => !isLook(bundle)) ?? []
  const yes = bundles.filter((bundle) => answerTo(state, bundle)?.answer === 'authorized').length
  return `${yes} of ${bundles.length} authorized, ${moneyWords(authorizedCents(state, orderMoney(order)))} with tax`
}

/** Once every step is closed or set aside. */
export const settledWork = ({ state }: ReadOrder): string | undefined => {
  const steps = state.plan?.plan.steps ?? []
  const isDone = steps.every(({ stepKey }) => state.closed[stepKey] || state.setAside[stepKey])
  return steps.length > 0 && isDone ? 'Every step is closed or set aside.' : undefined
}

const isConfirmed = ({ diagnosis }: OrderState): boolean =>
  diagnosis !== null && diagnosis.confirmed !== null && !diagnosis.outdated

const isAnswered = (state: OrderState): boolean =>
  isConfirmed(state) && state.estimates.length > 0 && unansweredBundles(state).length === 0
