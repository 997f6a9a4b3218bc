import type { FloorRow, Move } from '@bayledger/contract/orders'

/** The groups of the floor list, most urgent first. */
export const floorGroups = [
  { title: 'Desk', movers: ['desk', 'manager'] },
  { title: 'Bay', movers: ['bay'] },
  { title: 'Torque check', movers: ['torque-check'] },
  { title: 'Parts', movers: ['parts'] },
  { title: 'Customer', movers: ['customer'] },
  { title: 'Out on the road', movers: ['out-on-the-road'] },
  { title: 'Waiting until', movers: ['waiting-until'] },
] as const satisfies readonly { title: string; movers: readonly Move['mover'][] }[]

/** Rows of one group: stops first, then by what was promised, then by age. */
export const rowsOfGroup = (rows: readonly FloorRow[], movers: readonly Move['mover'][]): FloorRow[] =>
  rows
    .filter((row) => row.isOpen && row.moves[0] !== undefined && movers.includes(row.moves[0].mover))
    .sort((one, other) => rank(one).localeCompare(rank(other)))

const rank = (row: FloorRow): string => {
  const stop = row.moves.some(({ code }) => code === 'stop-untold') ? '0' : '1'
  return `${stop} ${row.promisedAt ?? '9999'} ${row.moves[0]?.since ?? row.openedAt}`
}
