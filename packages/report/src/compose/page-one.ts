import { severityOf } from '@bayledger/ledger/questions/severity'
import type { OrderState } from '@bayledger/ledger/state'
import type { Finding, Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import { english } from '@bayledger/wording/en/english'
import { fieldWords } from '@bayledger/wording/fields'
import { reasonWords } from '@bayledger/wording/reasons'
import { telephoneWords } from '@bayledger/wording/telephone'
import { sentenceFor } from '@bayledger/wording/worded-diagnosis'
import type { Cell, PageOne } from '../content.ts'
import { notDoneLines } from './answers.ts'
import { personalText, type ReportContext } from './context.ts'
import { clockWords, distance, number, recordedOr, sentence, words } from './figures.ts'
import { nextLines } from './next-lines.ts'
import { authorName } from './people.ts'
import { canDrive, fixed } from './verdicts.ts'
import { whatWeDid } from './what-we-did.ts'
import { wheelLines } from './wheel-lines.ts'

export const composePageOne = (state: OrderState, context: ReportContext): PageOne => ({
  canDrive: canDrive(state),
  shop: shopHead(context),
  facts: facts(state, context),
  told: told(state, context),
  found: found(state, context),
  did: whatWeDid(state),
  notDone: notDoneLines(state, context).map(({ title, answer }) => ({ title, answer })),
  fixed: fixed(state),
  wheels: wheelLines(state),
  next: nextLines(state),
  signatures: [
    { label: 'Customer', name: context.customerName },
    { label: 'For the shop', name: state.opened ? authorName(context, state.opened.written.by) : null },
  ],
})

const shopHead = ({ shop }: ReportContext): PageOne['shop'] => ({
  name: shop.name,
  lines: [
    ...shop.lines.filter((line) => line !== shop.name),
    ...(shop.telephone ? [`Call ${telephoneWords(shop.telephone)}`] : []),
  ],
})

const id = (text: string): Cell => ({ kind: 'id', text })

const facts = (state: OrderState, context: ReportContext): PageOne['facts'] => [
  { label: 'Order', value: recordedOr(state.opened?.orderNumber, words) },
  { label: 'Report', value: words(context.reportNumber) },
  { label: 'Date', value: words(clockWords(context.composedAt, context.timeZone)) },
  { label: 'Vehicle', value: words(context.vehicle.description) },
  { label: 'Plate', value: recordedOr(context.vehicle.plate, id) },
  { label: 'VIN, last 6', value: recordedOr(context.vehicle.vinLastSix, id) },
  { label: 'Odometer in', value: recordedOr(state.opened?.odometer, distance) },
  {
    label: 'Odometer out',
    value: recordedOr(state.handedBack?.odometer ?? state.drives.at(-1)?.odometerIn, distance),
  },
]

const told = (state: OrderState, context: ReportContext): PageOne['told'] => ({
  text: recordedOr(state.complaint, ({ words: digest }) => words(personalText(context, digest))),
  entry: state.complaint?.written.seq ?? null,
})

/** The technician's own finding where they disagreed; else the stops and the cause, or whatever was found first. */
const found = (state: OrderState, context: ReportContext): PageOne['found'] => {
  const issued = state.diagnosis
  if (!issued)
    return {
      severity: 'not-checked',
      sentence: 'No findings were issued on this order.',
      proof: null,
      entry: null,
    }
  const entry = issued.written.seq
  if (issued.confirmed?.agrees === false)
    return {
      severity: 'cause',
      sentence: `${issued.confirmed.ownFinding} (the technician’s own finding: ${personalText(context, issued.confirmed.reason)})`,
      proof: null,
      entry: issued.confirmed.written.seq,
    }
  const { findings, primary } = issued.diagnosis
  const cause = findings.find(({ code }) => code === primary)
  const stops = findings.filter(({ kind }) => kind === 'stop')
  const [first = cause ?? findings[0]] = stops
  if (!first)
    return {
      severity: 'for-information',
      sentence: 'Nothing was found that explains the warning light.',
      proof: null,
      entry,
    }
  const told = (stops.length === 0 ? [first] : stops).map((finding) => sentenceFor(english, finding))
  const alsoCause = cause && cause.kind !== 'stop' && stops.length > 0
  return {
    severity: severityOf(first, primary),
    sentence: [
      ...told,
      ...(alsoCause ? [`${english.severities.cause}: ${sentenceFor(english, cause)}`] : []),
    ].join(' '),
    proof: proofOfFinding(cause ?? first),
    entry,
  }
}

/** The first number among the finding's reasons, with what it says. */
const proofOfFinding = ({ because }: Finding): PageOne['found']['proof'] => {
  const reason = because.find(({ value }) => typeof value === 'number')
  if (!reason || typeof reason.value !== 'number') return null
  return {
    figure: { kind: 'figure', value: number(reason.value, reason.unit ?? ''), unit: unitWords(reason) },
    says: sentence(`${fieldWords(english, reason.field)}: ${reasonWords(english, reason)}`),
  }
}

export const unitWords = ({ unit }: Reason): string => {
  if (unit === 'F' || unit === 'C') return `°${unit}`
  return unit ?? ''
}
