import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import { wheelShortfalls } from '@bayledger/reckoning/diagnosis/facts/wheel-shortfall'
import { shortfalls } from '@bayledger/wording/en/shortfalls'
import { wheelNames } from '@bayledger/wording/en/wheels'
import { shortfallWords } from '@bayledger/wording/shortfalls'
import { Line, Lines } from '../../../../ui/section.tsx'
import type { OrderPart } from '../order-part.ts'

/** What each tire lacks as received: how much of it is colder air, and how much is lost. */
export function ShortfallLines({ order }: OrderPart) {
  const lacking = wheelShortfalls(evidenceOf(order.state, null))
  if (lacking.length === 0) return null
  return (
    <Lines>
      {lacking.map((shortfall) => (
        <Line key={shortfall.wheel} name={wheelNames[shortfall.wheel]}>
          {shortfallWords(shortfalls, shortfall)}
        </Line>
      ))}
    </Lines>
  )
}
