import type { Mover } from '@bayledger/ledger/questions/move'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import type { OrderState } from '@bayledger/ledger/state'
import { moves } from '@bayledger/wording/en/moves'
import { moveWords } from '@bayledger/wording/moves'
import { StepScreen } from '../form/step-screen.tsx'
import { useOutbox } from '../record/bay-outbox.ts'
import { useOrderHere } from './order-here.ts'

/** A move that is said as an order, without whom it is for. */
const whose: Partial<Readonly<Record<Mover, string>>> = { desk: 'The desk: ', manager: 'The manager: ' }

/**
 * Shown while someone else must act: who, and for what. Whatever that is, it is done with the server: a tablet out of its
 * reach says that it hears nothing of it.
 */
export function Waiting({ state }: { state: OrderState }) {
  const stuck = useOutbox((content) => content.stuck)
  const isUnread = useOrderHere(state.orderId, false).isError
  return (
    <StepScreen title="Nothing for the bay now">
      {nextMoves(state, new Date().toISOString()).map((move) => (
        <p key={`${move.code} ${move.wheel}`} className="sentence">
          {whose[move.mover]}
          {moveWords(moves, move)}
        </p>
      ))}
      {stuck > 0 || isUnread ? (
        <p role="status" className="sentence">
          The server is out of reach. The estimate, the customer’s answer, the report and the hand-back need
          it, and this tablet hears of them only in the shop’s network.
          {stuck > 0 ? ' What was written here is kept, and is sent then by itself.' : ''}
        </p>
      ) : null}
    </StepScreen>
  )
}
