import { lastOdometer } from '@bayledger/ledger/questions/odometer'
import type { OrderState } from '@bayledger/ledger/state'
import { telephoneWords } from '@bayledger/wording/telephone'
import type { Cell, PageOne } from '../content.ts'
import { notDoneOnPageOne } from './answers.ts'
import { personalText, type ReportContext } from './context.ts'
import { clockWords, distance, gap, recordedOr, words } from './figures.ts'
import { foundParts } from './found-parts.ts'
import { nextLines } from './next-lines.ts'
import { authorName } from './people.ts'
import { priceLine } from './price-line.ts'
import type { Spoken } from './spoken.ts'
import { canDrive, fixed } from './verdicts.ts'
import { whatWeDid } from './what-we-did.ts'
import { wheelLines } from './wheel-lines.ts'

const says = ({ language }: Spoken) => language.report.pageOne

export const composePageOne = (state: OrderState, context: ReportContext): PageOne => ({
  canDrive: canDrive(state, context),
  shop: shopHead(context),
  facts: facts(state, context),
  told: told(state, context),
  found: foundParts(state, context),
  did: [...whatWeDid(state, context), priceLine(state, context)],
  notDone: notDoneOnPageOne(state, context),
  fixed: fixed(state, context),
  wheels: wheelLines(state, context),
  next: nextLines(state, context),
  signatures: [
    { label: says(context).signatures.customer, name: context.customerName },
    {
      label: says(context).signatures.shop,
      name: state.opened ? authorName(context, state.opened.written.by) : null,
    },
  ],
  signing: says(context).signing,
  check: says(context).check(context.checkAddress),
})

const shopHead = (context: ReportContext): PageOne['shop'] => ({
  name: context.shop.name,
  lines: [
    ...context.shop.lines.filter((line) => line !== context.shop.name),
    ...(context.shop.telephone ? [says(context).call(telephoneWords(context.shop.telephone))] : []),
  ],
})

const id = (text: string): Cell => ({ kind: 'id', text })

const facts = (state: OrderState, context: ReportContext): PageOne['facts'] => [
  { label: says(context).facts.order, value: recordedOr(context, state.opened?.orderNumber, words) },
  { label: says(context).facts.report, value: words(context.reportNumber) },
  {
    label: says(context).facts.date,
    value: words(clockWords(context, context.composedAt, context.timeZone)),
  },
  { label: says(context).facts.vehicle, value: words(context.vehicle.description) },
  { label: says(context).facts.plate, value: recordedOr(context, context.vehicle.plate, id) },
  { label: says(context).facts.vin, value: recordedOr(context, context.vehicle.vinLastSix, id) },
  {
    label: readTwice(context, says(context).facts.odometer.came, state.opened?.odometerConfirmed),
    value: recordedOr(context, state.opened?.odometer, distance),
  },
  odometerOut(state, context),
]

/** The last reading before the report was sealed, named for when it was read. */
const odometerOut = (state: OrderState, context: Spoken): PageOne['facts'][number] => {
  const last = lastOdometer(state)
  const { odometer, notReadAgain } = says(context).facts
  if (!last || last.at === 'write-up') return { label: odometer.left, value: gap(notReadAgain) }
  return {
    label: readTwice(context, last.at === 'hand-back' ? odometer.left : odometer.drove, last.confirmed),
    value: distance(last.distance),
  }
}

/** A reading that was unlikely and was confirmed says so. */
const readTwice = (context: Spoken, label: string, confirmed = false): string =>
  confirmed ? says(context).facts.readTwice(label) : label

const told = (state: OrderState, context: ReportContext): PageOne['told'] => ({
  text: recordedOr(context, state.complaint, ({ words: digest }) => words(personalText(context, digest))),
  entry: state.complaint?.written.seq ?? null,
})
