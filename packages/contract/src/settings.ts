import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Day, Id } from './identity.ts'

/** `correctionPsi`: what a gauge shows more than the master gauge, in psi; a wrench's range is in its own unit. */
export const Instrument = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('gauge'),
    instrumentId: Id,
    locationId: Id,
    code: z.string(),
    dueOn: z.nullable(Day),
    quarantined: z.boolean(),
    correctionPsi: z.number(),
  }),
  z.strictObject({
    kind: z.literal('wrench'),
    instrumentId: Id,
    locationId: Id,
    code: z.string(),
    dueOn: Day,
    quarantined: z.boolean(),
    cycles: z.int(),
    rangeLow: z.number(),
    rangeHigh: z.number(),
    rangeUnit: z.enum(['lbf·ft', 'lbf·in', 'N·m']),
  }),
])
export type Instrument = z.infer<typeof Instrument>

export const listInstruments = endpoint({
  operationId: 'listInstruments',
  summary: 'Gauges and torque wrenches with what they may be used for today.',
  method: 'GET',
  path: '/api/instruments',
  access: { who: 'staff' },
  replies: { 200: z.strictObject({ instruments: z.array(Instrument) }) },
  problems: [],
})

/** A line of a place's stock list; `words` are the shop's own. No prices: whoever draws parts needs none. */
export const StockPart = z.strictObject({
  partNumber: z.string(),
  locationId: Id,
  kind: z.enum(['sensor', 'kit', 'repair-unit', 'tire', 'fastener', 'supply']),
  words: z.string(),
  frequenciesMHz: z.array(z.number()),
  stem: z.nullable(z.enum(['snap-in', 'clamp-in'])),
  holeMillimeters: z.nullable(z.number()),
  protocols: z.array(z.string()),
  ratedPsi: z.nullable(z.number()),
  /** By the maker of the part, in lbf·in; `null`: the shop has not written it down. */
  nutLbfIn: z.nullable(z.number()),
  screwLbfIn: z.nullable(z.number()),
  shelfMonths: z.nullable(z.int()),
  madeMonth: z.nullable(z.string()),
  heldBack: z.nullable(z.string()),
  onHand: z.int(),
  /** Received lately, newest first. */
  lots: z.array(z.string()),
})
export type StockPart = z.infer<typeof StockPart>

export const listStock = endpoint({
  operationId: 'listStock',
  summary: 'The stock lists of all places: what each part is, and how many are there.',
  method: 'GET',
  path: '/api/stock',
  access: { who: 'staff' },
  replies: { 200: z.strictObject({ parts: z.array(StockPart) }) },
  problems: [],
})

export const Location = z.strictObject({
  locationId: Id,
  name: z.string(),
  altitudeFeet: z.number(),
  timeZone: z.string(),
  lawProfile: z.record(z.string(), z.unknown()),
})
export type Location = z.infer<typeof Location>

/** One setting in its newest version; older ones stay in the orders that used them. */
export const Setting = z.strictObject({ kind: z.string(), version: z.int(), body: z.unknown() })
export type Setting = z.infer<typeof Setting>

export const getSettings = endpoint({
  operationId: 'getSettings',
  summary:
    "The shop's places and the newest version of its settings, prices only for those who may have them.",
  method: 'GET',
  path: '/api/settings',
  access: { who: 'staff' },
  replies: {
    200: z.strictObject({
      shop: z.strictObject({ shopId: Id, name: z.string() }),
      locations: z.array(Location),
      settings: z.array(Setting),
    }),
  },
  problems: [],
})
