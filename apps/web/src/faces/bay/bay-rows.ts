import type { FloorRow, Move } from '@bayledger/contract/orders'

const bayMovers: ReadonlySet<Move['mover']> = new Set(['bay', 'torque-check', 'out-on-the-road'])

/** Whether someone in the bay must act on the order, even if others must too. */
export const isForTheBay = ({ isOpen, moves }: FloorRow): boolean =>
  isOpen && moves.some(({ mover }) => bayMovers.has(mover))

/** What the bay must do there, the loudest first. */
export const bayMoves = ({ moves }: FloorRow): Move[] => moves.filter(({ mover }) => bayMovers.has(mover))

/** My own orders first, then unassigned, then others'; within each: customer waiting here, promised time, longest wait. */
export const inBayOrder = (rows: readonly FloorRow[], staffId: string): FloorRow[] =>
  [...rows].sort((one, other) => rank(one, staffId).localeCompare(rank(other, staffId)))

const rank = (row: FloorRow, staffId: string): string =>
  [
    row.assignedTo === staffId ? 0 : row.assignedTo === null ? 1 : 2,
    row.waitsHere ? 0 : 1,
    row.promisedAt ?? '9999',
    row.moves[0]?.since ?? row.openedAt,
  ].join(' ')
