import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line } from './identity.ts'
import { recordEndpoints, recordOf } from './record.ts'

const within = (low: number, high: number, words: string) =>
  z.nullable(z.number(words).check(z.gte(low, words), z.lte(high, words)))
const wholeWithin = (low: number, high: number, words: string) =>
  z.nullable(z.int(words).check(z.gte(low, words), z.lte(high, words)))

/** What torque a valve's nut or screw can have: a figure in another unit, or of a wheel's nut, lies outside. */
const valveTorque = within(
  1,
  200,
  '1 to 200 lbf·in, as on the sensor maker’s sheet. 1 N·m is 8.85 lbf·in; a figure in lbf·ft belongs to a wheel',
)

/**
 * What a line of the stock list says of its part, as it is edited; `null` and an empty list: not known, so that matching
 * asks for it. `shelfMonths` is a shorter shelf limit than the trade's. Part number and place stay once they are saved.
 *
 * @units MHz, mm, psi, lbf·in, calendar months, days, cents
 */
export const StockContent = z.strictObject({
  partNumber: line(60),
  locationId: Id,
  kind: z.enum(['sensor', 'kit', 'repair-unit', 'tire', 'fastener', 'supply']),
  words: line(120),
  frequenciesMHz: z.array(z.number().check(z.gte(100), z.lte(3_000))).check(z.maxLength(2)),
  stem: z.nullable(z.enum(['snap-in', 'clamp-in'])),
  holeMillimeters: within(5, 30, '5 to 30 mm, the valve hole of the wheel'),
  protocols: z.array(line(40)).check(z.maxLength(60)),
  ratedPsi: within(20, 200, '20 to 200 psi, as the part’s maker rates it'),
  nutLbfIn: valveTorque,
  screwLbfIn: valveTorque,
  madeMonth: z.nullable(
    z.string().check(z.regex(/^\d{4}-(0[1-9]|1[0-2])$/, 'a year and a month, as 2025-08')),
  ),
  shelfMonths: wholeWithin(1, 36, 'a whole number of months from 1 to 36'),
  heldBack: z.nullable(line(200)),
  minimum: wholeWithin(0, 9_999, 'a whole number from 0 to 9999'),
  leadDays: wholeWithin(0, 365, 'a whole number of days from 0 to 365'),
  coreDepositCents: wholeWithin(0, 1_000_000, 'an amount from 0.00 to 10,000.00'),
  supplier: z.nullable(line(120)),
})
export type StockContent = z.infer<typeof StockContent>

/** A part that an order waits for. */
const Promised = z.strictObject({ orderId: Id, orderNumber: z.string(), promisedAt: z.string() })

/**
 * What the shop knows of a line besides. `onHand` may be under zero: parts that were drawn and never received.
 * `suggestedMinimum`: what the use of 90 days and the days of delivery ask for.
 */
const StockFacts = z.strictObject({
  onHand: z.int(),
  onTheWay: z.int(),
  coresOwed: z.int(),
  drawnIn90Days: z.int(),
  suggestedMinimum: z.nullable(z.int()),
  lots: z.array(z.string()),
  promised: z.array(Promised),
})

/** A line of a place's stock list. */
export const StockItem = recordOf(StockContent, StockFacts)
export type StockItem = z.infer<typeof StockItem>

/** Parts that left one place and have not arrived at the other. */
export const StockTransfer = z.strictObject({
  transferId: Id,
  partNumber: z.string(),
  fromLocationId: Id,
  toLocationId: Id,
  quantity: z.int(),
  lot: z.nullable(z.string()),
  sentAt: Instant,
})
export type StockTransfer = z.infer<typeof StockTransfer>

const quantity = z.int('a whole number').check(z.gte(1, '1 or more'), z.lte(9_999, '9999 or less'))
/** Trimmed here: a lot with a blank at its end is the same lot. */
const Lot = z.nullable(line(60))
const words = z.nullable(line(200))

/** What somebody did with a part outside of orders. A count names what the list said when it was made. */
export const StockChangeRequest = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('received'),
    quantity,
    lot: Lot,
    cores: z.int().check(z.gte(0), z.lte(9_999)),
    words,
  }),
  z.strictObject({
    kind: z.literal('counted'),
    found: z.int('a whole number').check(z.gte(0, '0 or more'), z.lte(99_999)),
    listed: z.int(),
    words,
  }),
  z.strictObject({ kind: z.literal('scrapped'), quantity, lot: Lot, words: line(200) }),
  z.strictObject({ kind: z.literal('sent'), quantity, lot: Lot, toLocationId: Id }),
  z.strictObject({ kind: z.literal('core-returned'), cores: quantity, words }),
])
export type StockChangeRequest = z.infer<typeof StockChangeRequest>

/** One movement, of an order or without one; `words` are a person's. */
export const StockChange = z.strictObject({
  at: Instant,
  kind: z.enum([
    'opened',
    'received',
    'counted',
    'scrapped',
    'sent',
    'arrived',
    'core-returned',
    'drawn',
    'withdrawn',
  ]),
  quantity: z.int(),
  cores: z.int(),
  lot: z.nullable(z.string()),
  words: z.nullable(z.string()),
  by: z.nullable(z.string()),
  orderId: z.nullable(Id),
  orderNumber: z.nullable(z.string()),
})
export type StockChange = z.infer<typeof StockChange>

const editors = ['manager', 'owner'] as const
const params = z.strictObject({ id: Id })
const read = { who: 'desk', roles: deskRoles } as const

const records = recordEndpoints({
  name: { one: 'StockItem', all: 'StockItems' },
  path: '/api/stock/items',
  words: { one: 'line of the stock list', all: 'stock lists' },
  roles: editors,
  content: StockContent,
  facts: StockFacts,
})

/** The lines of the stock lists of all places; whoever meets customers reads them, a manager or the owner edits them. */
export const stockItems = {
  ...records,
  list: { ...records.list, access: read },
  read: { ...records.read, access: read },
}

export const listTransfers = endpoint({
  operationId: 'listTransfers',
  summary: 'Parts that are on their way from one place to another.',
  method: 'GET',
  path: '/api/stock/transfers',
  access: read,
  replies: { 200: z.strictObject({ transfers: z.array(StockTransfer) }) },
  problems: [],
})

export const listStockChanges = endpoint({
  operationId: 'listStockChanges',
  summary: 'The newest 200 movements of a part at a place, with who and when.',
  method: 'GET',
  path: '/api/stock/items/:id/changes',
  access: read,
  params,
  replies: { 200: z.strictObject({ changes: z.array(StockChange).check(z.maxLength(200)) }) },
  problems: ['RECORD_NOT_FOUND'],
})

export const changeStock = endpoint({
  operationId: 'changeStock',
  summary: 'Receive, count, scrap, send to another place, or give cores back.',
  method: 'POST',
  path: '/api/stock/items/:id/changes',
  access: read,
  once: true,
  params,
  body: StockChangeRequest,
  replies: { 201: StockItem },
  problems: ['RECORD_NOT_FOUND', 'STOCK_NOT_MOVED'],
})

export const receiveTransfer = endpoint({
  operationId: 'receiveTransfer',
  summary: 'Record what arrived of a transfer; it is over then.',
  method: 'POST',
  path: '/api/stock/transfers/:transferId/arrival',
  access: read,
  once: true,
  params: z.strictObject({ transferId: Id }),
  body: z.strictObject({ quantity: z.int().check(z.gte(0), z.lte(9_999)), words }),
  replies: { 201: StockItem },
  problems: ['STOCK_NOT_MOVED'],
})

/** Every line of the stock lists, as CSV and back; another number on hand is a count. */
export const stockCsv = csvEndpoints({
  name: 'Stock',
  words: 'stock lists',
  path: '/api/stock',
  roles: editors,
})

/** A part or a kit of the lot at a vehicle (a kit from when it was fitted), and where its sensor was heard last; `null`: it was not fitted, or never heard again. */
export const RecalledPart = z.strictObject({
  orderId: Id,
  orderNumber: z.string(),
  drawnAt: Instant,
  isKit: z.boolean(),
  wheel: z.nullable(z.string()),
  partNumber: z.string(),
  lot: z.string(),
  sensorId: z.nullable(z.string()),
  heardLast: z.nullable(z.strictObject({ at: Instant, wheel: z.string(), onThisVehicle: z.boolean() })),
})
export type RecalledPart = z.infer<typeof RecalledPart>

/** Telephone and e-mail are absent where the caller gets neither. The owner is today's. */
export const RecalledVehicle = z.strictObject({
  vehicleId: Id,
  description: z.string(),
  plate: z.nullable(z.string()),
  owner: z.strictObject({
    customerId: Id,
    name: z.string(),
    mayCall: z.boolean(),
    mayText: z.boolean(),
    mayEmail: z.boolean(),
    phone: z.optional(z.nullable(z.string())),
    email: z.optional(z.nullable(z.string())),
  }),
  parts: z.array(RecalledPart),
})
export type RecalledVehicle = z.infer<typeof RecalledVehicle>

/** How many of the lot came to a place and left it again, as far as lots were written down. */
export const RecalledShelf = z.strictObject({
  locationId: Id,
  partNumber: z.string(),
  came: z.int(),
  left: z.int(),
})
export type RecalledShelf = z.infer<typeof RecalledShelf>

export const recallLot = endpoint({
  operationId: 'recallLot',
  summary:
    'Which vehicles have a part of a lot, with whom to call and whether they agreed to it, and what of it may still lie on a shelf.',
  method: 'GET',
  path: '/api/stock/recall',
  access: { who: 'staff' },
  query: z.strictObject({ lot: line(60) }),
  replies: {
    200: z.strictObject({ vehicles: z.array(RecalledVehicle), shelves: z.array(RecalledShelf) }),
  },
  problems: [],
})
