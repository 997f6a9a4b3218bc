import { openTroubles } from '@bayledger/ledger/questions/troubles'
import type { OrderState } from '@bayledger/ledger/state'
import { parkedWords } from '@bayledger/wording/en/troubles'

/** Which wheels are parked, why, and what each waits for. */
export function ParkedBand({ state }: { state: OrderState }) {
  const parked = openTroubles(state).filter(({ since }) => since > 0)
  if (parked.length === 0) return null
  return (
    <p className="loud-band" role="status">
      {parked.map(({ wheel, ...trouble }) => parkedWords(wheel, trouble)).join(' · ')}
    </p>
  )
}
