import type { FloorRow } from '@bayledger/contract/orders'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { moves } from '@bayledger/wording/en/moves'
import { moveWords } from '@bayledger/wording/moves'
import { foldOnTop, type OrderReply, unsentOf } from '../../../ledger/order.ts'
import type { Parcel } from '../../../ledger/parcel.ts'

/**
 * A row of the floor list as this tablet knows it: where something was written here that the server does not have, the
 * order waits for what follows from that. `now`: UTC text.
 */
export const rowHere = (
  row: FloorRow,
  order: OrderReply | undefined,
  onTop: readonly Parcel[],
  now: string,
): FloorRow => {
  const unsent = order && unsentOf(onTop, order)
  if (order === undefined || unsent === undefined || unsent.drafts.length === 0) return row
  const { state } = foldOnTop(order, unsent.drafts)
  return {
    ...row,
    assignedTo: state.assigned?.staffId ?? row.assignedTo,
    moves: nextMoves(state, now).map((move) => ({ ...move, words: moveWords(moves, move) })),
  }
}
