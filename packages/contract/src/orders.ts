import { sideKinds } from '@bayledger/ledger/side-kinds'
import { HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { Distance } from '@bayledger/reckoning/quantity'
import * as z from 'zod/mini'
import { Customer } from './customers.ts'
import { endpoint } from './endpoint.ts'
import { SentEntry } from './entries.ts'
import { Cursor, Digest, Id, Instant } from './identity.ts'
import { Vehicle } from './vehicles.ts'

/** One thing an order waits for; see the ledger's `nextMoves`. */
export const Move = z.strictObject({
  mover: z.enum([
    'desk',
    'manager',
    'bay',
    'torque-check',
    'parts',
    'customer',
    'out-on-the-road',
    'waiting-until',
    'nobody',
  ]),
  code: z.string(),
  wheel: z.nullable(z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])),
  /** What the words are made from: figures and codes. */
  values: z.record(z.string(), z.unknown()),
  words: z.string(),
  since: z.nullable(Instant),
  until: z.nullable(Instant),
})
export type Move = z.infer<typeof Move>

export const Head = z.strictObject({ seq: z.int(), hash: Digest })

/** A side that the caller may read; an erased one is missing here, and so is every side of a withheld kind. */
export const ReadSide = z.strictObject({ side: z.enum(sideKinds), digest: Digest, text: z.string() })
export type ReadSide = z.infer<typeof ReadSide>

/** The sides of an order, and the kinds of side that this session is not given. */
const sides = { sides: z.array(ReadSide), withheld: z.array(z.enum(sideKinds)) }

/**
 * Whether no tablet but the one that asks holds the order, as far as the server has heard; at the desk it is `false`.
 * What a tablet holds, it may still write to while it is out of reach.
 */
const heldAlone = z.boolean()

/** A reading of an odometer, and when it was received. */
const ReadOdometer = z.strictObject({ distance: Distance, readAt: Instant })

const params = z.strictObject({ orderId: Id })

export const getOrder = endpoint({
  operationId: 'getOrder',
  summary: 'An order: its whole ledger, what lies beside it, customer and vehicle.',
  method: 'GET',
  path: '/api/orders/:orderId',
  access: { who: 'staff' },
  params,
  repliesWithLedger: true,
  replies: {
    200: z.strictObject({
      orderId: Id,
      number: z.string(),
      head: Head,
      entries: z.array(SentEntry),
      ...sides,
      customer: Customer,
      vehicle: Vehicle,
      /** What other orders of this shop know of the vehicle: evidence is made of it and of the ledger. */
      history: z.nullable(HistoryEvidence),
      /** What the vehicle's odometer read last at an earlier visit. */
      earlierOdometer: z.nullable(ReadOdometer),
      heldAlone,
      /** Why nothing can be added: an entry cannot be relied on, and only those before it are here. */
      readOnly: z.nullable(
        z.strictObject({
          code: z.enum(['chain-broken', 'newer-than-this-program']),
          seq: z.int(),
          words: z.string(),
        }),
      ),
    }),
  },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'ORDER_WITHHELD'],
})

export const getEntriesAfter = endpoint({
  operationId: 'getEntriesAfter',
  summary: 'What was written to an order after the entry with this number.',
  method: 'GET',
  path: '/api/orders/:orderId/entries',
  access: { who: 'staff' },
  params,
  query: z.strictObject({ after: z.string().check(z.regex(/^\d{1,9}$/)) }),
  repliesWithLedger: true,
  replies: {
    200: z.strictObject({
      head: Head,
      entries: z.array(SentEntry),
      ...sides,
      history: z.nullable(HistoryEvidence),
      heldAlone,
    }),
  },
  problems: ['ORDER_NOT_FOUND', 'ORDER_READ_ONLY', 'ORDER_WITHHELD'],
})

export const keepOrders = endpoint({
  operationId: 'keepOrders',
  summary: 'The orders that this tablet goes on holding; it has dropped all others.',
  method: 'PUT',
  path: '/api/held-orders',
  access: { who: 'staff' },
  body: z.strictObject({ orderIds: z.array(Id).check(z.maxLength(200)) }),
  replies: { 204: null },
  problems: [],
})

export const getLastOdometer = endpoint({
  operationId: 'getLastOdometer',
  summary: 'What a vehicle’s odometer read last at a visit of this shop.',
  method: 'GET',
  path: '/api/vehicles/:vehicleId/last-odometer',
  access: { who: 'staff' },
  params: z.strictObject({ vehicleId: Id }),
  replies: { 200: z.strictObject({ last: z.nullable(ReadOdometer) }) },
  problems: ['VEHICLE_NOT_FOUND'],
})

/** When a vehicle will be ready: about when, and for which part's arrival it waits; or that a part has no date. */
export const Ready = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('about'), at: Instant, partAt: z.nullable(Instant) }),
  z.strictObject({ is: z.literal('part-without-date') }),
])
export type Ready = z.infer<typeof Ready>

/** One row of the floor list; the first move ranks it, all are shown. */
export const FloorRow = z.strictObject({
  orderId: Id,
  locationId: Id,
  number: z.string(),
  seq: z.int(),
  openedAt: Instant,
  promisedAt: z.nullable(Instant),
  /** `null` before there is a plan, and once everything is done. */
  ready: z.nullable(Ready),
  waitsHere: z.boolean(),
  assignedTo: z.nullable(Id),
  isOpen: z.boolean(),
  sealed: z.boolean(),
  customerName: z.string(),
  vehicleDescription: z.string(),
  color: z.nullable(z.string()),
  plate: z.nullable(z.string()),
  moves: z.array(Move),
})
export type FloorRow = z.infer<typeof FloorRow>

/** At most 150 ids, as many as a wake-up names. */
const oneId = '[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}'
const orderList = new RegExp(`^${oneId}(,${oneId}){0,149}$`)

export const listFloor = endpoint({
  operationId: 'listFloor',
  summary: 'The floor: open orders of a place (all places without one), and those that ended today.',
  method: 'GET',
  path: '/api/floor',
  access: { who: 'staff' },
  query: z.strictObject({
    locationId: z.optional(Id),
    cursor: z.optional(Cursor),
    /** Only these orders, by id with commas between, on one page: what a wake-up named. */
    orders: z.optional(z.string().check(z.regex(orderList))),
  }),
  replies: {
    200: z.strictObject({ asOf: Instant, rows: z.array(FloorRow), next: z.nullable(z.string()) }),
  },
  problems: [],
})
