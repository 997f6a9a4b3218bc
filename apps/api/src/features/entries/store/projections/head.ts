import { type JobFigures, jobFigures } from '@bayledger/ledger/questions/job-figures'
import { type LeftToDo, leftToDo } from '@bayledger/ledger/questions/left-to-do'
import type { Move } from '@bayledger/ledger/questions/move'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import type { OrderState } from '@bayledger/ledger/state'

/** Moves from an instant on; the first stage holds from the last entry. */
export type AgendaStage = { readonly from: string | null; readonly moves: readonly Move[] }

/** What the floor list shows of an order without folding it: nothing that entries cannot rebuild, no personal text. */
export type HeadProjection = {
  readonly locationId: string
  readonly customerId: string
  readonly vehicleId: string
  readonly promisedAt: string | null
  readonly waitsHere: boolean
  readonly assignedTo: string | null
  readonly isOpen: boolean
  readonly sealed: boolean
  readonly agenda: readonly AgendaStage[]
  /** What a ready time is computed from, while the order is open. */
  readonly left: LeftToDo | null
  /** What it tells its owner, once it is over. */
  readonly figures: JobFigures | null
}

/** `at` is when the newest entry was received, so that a rebuild gives the same. */
export const projectHead = (state: OrderState, at: string): HeadProjection => {
  const { opened } = state
  if (!opened) throw new RangeError('an order that was never opened has no head')
  const until = state.wait && state.wait.until > at ? state.wait.until : null
  return {
    locationId: state.locationId ?? opened.locationId,
    customerId: opened.customerId,
    vehicleId: opened.vehicleId,
    promisedAt: opened.promisedAt,
    waitsHere: opened.waitsHere,
    assignedTo: state.assigned?.staffId ?? null,
    isOpen: !state.handedBack && !state.ended,
    sealed: state.reports.length > 0,
    agenda: [
      { from: null, moves: nextMoves(state, at) },
      ...(until === null ? [] : [{ from: until, moves: nextMoves(state, until) }]),
    ],
    left: leftToDo(state),
    figures: jobFigures(state),
  }
}

/** The columns that a head is written from, with their types. */
export const headColumns = {
  shop_id: 'uuid',
  order_id: 'uuid',
  after: 'int',
  seq: 'int',
  hash: 'text',
  location_id: 'uuid',
  customer_id: 'uuid',
  vehicle_id: 'uuid',
  promised_at: 'timestamptz',
  waits_here: 'boolean',
  assigned_to: 'uuid',
  is_open: 'boolean',
  sealed: 'boolean',
  agenda: 'json',
  left_to_do: 'json',
  figures: 'json',
  at: 'timestamptz',
} as const

export type HeadRow = Readonly<Record<keyof typeof headColumns, unknown>>

/** The row of an order's head; `last` is its newest entry. */
export const headRow = (
  { shopId, orderId, after, head }: { shopId: string; orderId: string; after: number; head: HeadProjection },
  last: { readonly seq: number; readonly hash: string; readonly receivedAt: string },
): HeadRow => ({
  shop_id: shopId,
  order_id: orderId,
  after,
  seq: last.seq,
  hash: last.hash,
  location_id: head.locationId,
  customer_id: head.customerId,
  vehicle_id: head.vehicleId,
  promised_at: head.promisedAt,
  waits_here: head.waitsHere,
  assigned_to: head.assignedTo,
  is_open: head.isOpen,
  sealed: head.sealed,
  agenda: head.agenda,
  left_to_do: head.left,
  figures: head.figures,
  at: last.receivedAt,
})

/** Everything of a head but what is settled when the order is opened. */
export const setHead = `seq = a.seq, hash = a.hash, location_id = a.location_id, promised_at = a.promised_at,
    waits_here = a.waits_here, assigned_to = a.assigned_to, is_open = a.is_open, sealed = a.sealed,
    agenda = a.agenda, left_to_do = a.left_to_do, figures = a.figures, updated_at = a.at, ended_at = case when a.is_open then null else a.at end`
