import { answerTo, newestBundles } from '@bayledger/ledger/questions/answers'
import { bundleMoney } from '@bayledger/ledger/questions/money'
import { openTroubles } from '@bayledger/ledger/questions/troubles'
import type { FoundKind } from '@bayledger/ledger/state'
import { isConditional } from '@bayledger/reckoning/money/added-bundles'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { parkedWords, troubles } from '@bayledger/wording/en/troubles'
import { orderMoney } from '../../../features/ledger/order-money.ts'
import { money } from '../../../lib/format.ts'
import { Section } from '../../../ui/section.tsx'
import type { OrderPart } from './order-part.ts'

/** What the repair of a hole costs, once it is on the estimate. */
const repairPrice = (order: OrderPart['order'], wheel: WheelPosition | null, what: FoundKind): string => {
  const priced = newestBundles(order.state).find(({ works }) =>
    works.some((work) => work.kind === 'repair-puncture' && work.wheel === wheel),
  )
  if (what !== 'hole' || priced === undefined) return ''
  const cents = bundleMoney(orderMoney(order), priced.money)?.totals.totalCents
  return cents === undefined ? '' : ` It costs ${money(cents)} with tax.`
}

/** What the customer said, before the work began, to a stem that breaks; empty where nobody asked them. */
const saidOfStems = (order: OrderPart['order'], what: FoundKind): string => {
  const asked = newestBundles(order.state).find(isConditional)
  const answer = asked && answerTo(order.state, asked)?.answer
  if (what !== 'seized' || asked === undefined || !answer) return ''
  const cents = bundleMoney(orderMoney(order), asked.money)?.totals.totalCents
  return answer === 'authorized' && cents !== undefined
    ? ` Asked before, they said: go on if a stem breaks, up to ${money(cents)} with tax for each.`
    : ' Asked before, they said: stop and show me first.'
}

/** What the bay found and stopped for: what it waits for, the sentence for the customer, the technician's words. */
export function ParkedPart({ order }: OrderPart) {
  const { state } = order
  const parked = openTroubles(state).filter(({ since }) => since > 0)
  if (parked.length === 0 || state.reports.length > 0) return null
  const saidOf = (entryId: string): string | null => {
    const words = state.troubles.find(({ written }) => written.entryId === entryId)?.words ?? null
    return words === null ? null : order.personalText(words)
  }
  return (
    <Section
      title="Not right"
      id="not-right"
      note={parked.some(({ wheel }) => wheel !== null) ? 'the wheel is parked' : 'work is stopped'}
    >
      {parked.map(({ wheel, written, ...trouble }) => {
        const said = saidOf(written.entryId)
        return (
          <div key={written.entryId} className="stack">
            <p>{parkedWords(wheel, trouble)}</p>
            {trouble.waitsFor === 'answer' ? (
              <p>
                <strong>Say to the customer:</strong> {troubles.told[trouble.what](wheel)}
                {repairPrice(order, wheel, trouble.what)}
                {saidOfStems(order, trouble.what)}
              </p>
            ) : null}
            {said === null ? null : <p className="quiet">The technician wrote: {said}</p>}
          </div>
        )
      })}
    </Section>
  )
}
