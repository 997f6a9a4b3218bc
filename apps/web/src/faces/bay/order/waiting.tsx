import type { Mover } from '@bayledger/ledger/questions/move'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import type { OrderState } from '@bayledger/ledger/state'
import { moves } from '@bayledger/wording/en/moves'
import { moveWords } from '@bayledger/wording/moves'
import { StepScreen } from '../form/step-screen.tsx'

/** A move that is said as an order, without whom it is for. */
const whose: Partial<Readonly<Record<Mover, string>>> = { desk: 'The desk: ', manager: 'The manager: ' }

/** Shown while someone else must act: who, and for what. */
export function Waiting({ state }: { state: OrderState }) {
  return (
    <StepScreen title="Nothing for the bay now">
      {nextMoves(state, new Date().toISOString()).map((move) => (
        <p key={`${move.code} ${move.wheel}`} className="sentence">
          {whose[move.mover]}
          {moveWords(moves, move)}
        </p>
      ))}
    </StepScreen>
  )
}
