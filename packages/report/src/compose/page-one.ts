import { lastOdometer } from '@bayledger/ledger/questions/odometer'
import type { OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import { telephoneWords } from '@bayledger/wording/telephone'
import type { Cell, PageOne } from '../content.ts'
import { notDoneOnPageOne } from './answers.ts'
import { personalText, type ReportContext } from './context.ts'
import { clockWords, distance, gap, recordedOr, words } from './figures.ts'
import { foundParts } from './found-parts.ts'
import { nextLines } from './next-lines.ts'
import { authorName } from './people.ts'
import { priceLine } from './price-line.ts'
import { canDrive, fixed } from './verdicts.ts'
import { whatWeDid } from './what-we-did.ts'
import { wheelLines } from './wheel-lines.ts'

const { pageOne: says } = english.report

export const composePageOne = (state: OrderState, context: ReportContext): PageOne => ({
  canDrive: canDrive(state),
  shop: shopHead(context),
  facts: facts(state, context),
  told: told(state, context),
  found: foundParts(state, context),
  did: [...whatWeDid(state), priceLine(state, context)],
  notDone: notDoneOnPageOne(state, context),
  fixed: fixed(state),
  wheels: wheelLines(state),
  next: nextLines(state, context),
  signatures: [
    { label: says.signatures.customer, name: context.customerName },
    { label: says.signatures.shop, name: state.opened ? authorName(context, state.opened.written.by) : null },
  ],
  signing: says.signing,
  check: says.check(context.checkAddress),
})

const shopHead = ({ shop }: ReportContext): PageOne['shop'] => ({
  name: shop.name,
  lines: [
    ...shop.lines.filter((line) => line !== shop.name),
    ...(shop.telephone ? [says.call(telephoneWords(shop.telephone))] : []),
  ],
})

const id = (text: string): Cell => ({ kind: 'id', text })

const facts = (state: OrderState, context: ReportContext): PageOne['facts'] => [
  { label: says.facts.order, value: recordedOr(state.opened?.orderNumber, words) },
  { label: says.facts.report, value: words(context.reportNumber) },
  { label: says.facts.date, value: words(clockWords(context.composedAt, context.timeZone)) },
  { label: says.facts.vehicle, value: words(context.vehicle.description) },
  { label: says.facts.plate, value: recordedOr(context.vehicle.plate, id) },
  { label: says.facts.vin, value: recordedOr(context.vehicle.vinLastSix, id) },
  {
    label: readTwice(says.facts.odometer.came, state.opened?.odometerConfirmed),
    value: recordedOr(state.opened?.odometer, distance),
  },
  odometerOut(state),
]

/** The last reading before the report was sealed, named for when it was read. */
const odometerOut = (state: OrderState): PageOne['facts'][number] => {
  const last = lastOdometer(state)
  const { odometer, notReadAgain } = says.facts
  if (!last || last.at === 'write-up') return { label: odometer.left, value: gap(notReadAgain) }
  return {
    label: readTwice(last.at === 'hand-back' ? odometer.left : odometer.drove, last.confirmed),
    value: distance(last.distance),
  }
}

/** A reading that was unlikely and was confirmed says so. */
const readTwice = (label: string, confirmed = false): string =>
  confirmed ? says.facts.readTwice(label) : label

const told = (state: OrderState, context: ReportContext): PageOne['told'] => ({
  text: recordedOr(state.complaint, ({ words: digest }) => words(personalText(context, digest))),
  entry: state.complaint?.written.seq ?? null,
})
