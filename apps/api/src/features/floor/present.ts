import type { FloorRow, Move as SentMove } from '@bayledger/contract/orders'
import { type Move, move } from '@bayledger/ledger/questions/move'
import { aboutTime, type ReadyTime } from '@bayledger/reckoning/ready/ready-time'
import { presentMove } from '../../core/present-move.ts'
import { movesAt } from '../entries/service/moves-at.ts'
import type { Readiness, ReadyTimes } from './service/ready-times.ts'
import type { FloorRowStored } from './store.ts'

/** What is known of orders beside their ledgers: when they are ready, and whose estimate came to nothing, with when. */
type Beside = { readonly ready: ReadyTimes; readonly undelivered: ReadonlyMap<string, Date> }

export const presentFloorRow = (
  row: FloorRowStored,
  now: string,
  { ready, undelivered }: Beside,
): FloorRow => {
  const readiness = row.isOpen ? ready(row) : null
  const moves = movesAt(row.agenda, now).map(asDelivered(undelivered.get(row.orderId)))
  return {
    orderId: row.orderId,
    locationId: row.locationId,
    number: row.number,
    seq: row.seq,
    openedAt: row.openedAt.toISOString(),
    promisedAt: row.promisedAt?.toISOString() ?? null,
    ready: readiness && presentReady(readiness.ready, now),
    waitsHere: row.waitsHere,
    assignedTo: row.assignedTo,
    isOpen: row.isOpen,
    sealed: row.sealed,
    customerName: row.customerName,
    vehicleDescription: row.vehicleDescription,
    color: row.color,
    plate: row.plate,
    moves: withSlip(moves.map(presentMove), row.promisedAt, readiness),
  }
}

/** Nobody waits for the answer of a customer who did not get the estimate: the desk has to act. */
const asDelivered =
  (failedAt: Date | undefined) =>
  (waits: Move): Move =>
    failedAt === undefined || waits.code !== 'estimate-unanswered'
      ? waits
      : { ...move('desk', 'estimate-undelivered', {}, null), since: failedAt.toISOString() }

/** A ready time as it is said: rounded up, since it is an estimate. */
export const presentReady = (ready: ReadyTime, now: string): NonNullable<FloorRow['ready']> =>
  ready.is === 'part-without-date'
    ? ready
    : {
        is: 'about',
        at: new Date(aboutTime(ready.at, Date.parse(now))).toISOString(),
        partAt: ready.partAt === null ? null : new Date(ready.partAt).toISOString(),
      }

const deskMovers: ReadonlySet<SentMove['mover']> = new Set(['desk', 'manager'])

/** A promise that slips brings the order to the desk; where it is there already, what it waits for comes first. */
const withSlip = (
  moves: SentMove[],
  promisedAt: Date | null,
  readiness: Readiness | null,
): FloorRow['moves'] => {
  if (!readiness?.slips || readiness.ready.is !== 'about' || promisedAt === null) return moves
  const minutes = Math.round((readiness.ready.at - promisedAt.getTime()) / 60_000)
  const slip = presentMove(move('desk', 'promise-slips', { minutes }, null))
  const isAtDesk = moves[0] !== undefined && deskMovers.has(moves[0].mover)
  return isAtDesk ? [...moves.slice(0, 1), slip, ...moves.slice(1)] : [slip, ...moves]
}
