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
import { canDrive, fixed } from './verdicts.ts'
import { whatWeDid } from './what-we-did.ts'
import { wheelLines } from './wheel-lines.ts'

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
    { label: 'Customer', name: context.customerName },
    { label: 'For the shop', name: state.opened ? authorName(context, state.opened.written.by) : null },
  ],
  signing: 'Signing says that you were given this report, and nothing else.',
  check: `The code opens ${context.checkAddress}: choose this PDF there to see whether it is ours, unchanged. A paper copy cannot be checked.`,
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
  {
    label: readTwice('Odometer when it came', state.opened?.odometerConfirmed),
    value: recordedOr(state.opened?.odometer, distance),
  },
  odometerOut(state),
]

/** The last reading before the report was sealed, named for when it was read. */
const odometerOut = (state: OrderState): PageOne['facts'][number] => {
  const last = lastOdometer(state)
  if (!last || last.at === 'write-up') return { label: 'Odometer when it left', value: gap('not read again') }
  return {
    label: readTwice(
      last.at === 'hand-back' ? 'Odometer when it left' : 'Odometer after our drive',
      last.confirmed,
    ),
    value: distance(last.distance),
  }
}

/** A reading that was unlikely and was confirmed says so. */
const readTwice = (label: string, confirmed = false): string =>
  confirmed ? `${label} (unlikely, read twice)` : label

const told = (state: OrderState, context: ReportContext): PageOne['told'] => ({
  text: recordedOr(state.complaint, ({ words: digest }) => words(personalText(context, digest))),
  entry: state.complaint?.written.seq ?? null,
})
