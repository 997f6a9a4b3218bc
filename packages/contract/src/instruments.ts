import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { endpoint } from './endpoint.ts'
import { Day, Id, Instant, line } from './identity.ts'
import { recordEndpoints } from './record.ts'

const shared = {
  /** As it is written on the instrument; once in a shop. */
  code: line(20),
  locationId: Id,
  quarantined: z.boolean(),
  /** Why it is set aside, in the shop's own words. */
  why: z.nullable(line(200)),
}
const figure = z.number().check(z.gt(0), z.lte(2_000))

/** A torque wrench: its scale in its own unit, and its calibration. It is used up to and on the day on which it is due. */
const WrenchContent = z
  .strictObject({
    kind: z.literal('wrench'),
    ...shared,
    rangeLow: figure,
    rangeHigh: figure,
    rangeUnit: z.enum(['lbf·ft', 'lbf·in', 'N·m']),
    accuracyPercent: z.nullable(z.number().check(z.gt(0), z.lte(20))),
    calibratedOn: z.nullable(Day),
    dueOn: Day,
    certificate: z.nullable(line(60)),
  })
  .check(
    z.refine(({ rangeLow, rangeHigh }) => rangeLow < rangeHigh, {
      path: ['rangeHigh'],
      message: 'more than where the scale begins',
    }),
    z.refine(({ calibratedOn, dueOn }) => calibratedOn === null || calibratedOn <= dueOn, {
      path: ['dueOn'],
      message: 'a day after the calibration',
    }),
  )

/** A tire gauge. `offsetPsi`: what it shows more than the master gauge does. */
const GaugeContent = z.strictObject({
  kind: z.literal('gauge'),
  ...shared,
  offsetPsi: z.number().check(z.gte(-20), z.lte(20)),
  checkedOn: z.nullable(Day),
  dueOn: z.nullable(Day),
})

export const InstrumentContent = z.discriminatedUnion('kind', [WrenchContent, GaugeContent])
export type InstrumentContent = z.infer<typeof InstrumentContent>

/** `cycles`: clicks of a wrench since its calibration, counted from the ledger; `null` for a gauge. */
export const InstrumentFacts = z.strictObject({ cycles: z.nullable(z.int()) })
export type InstrumentFacts = z.infer<typeof InstrumentFacts>

export const instruments = recordEndpoints({
  name: { one: 'RegisteredInstrument', all: 'RegisteredInstruments' },
  words: { one: 'wrench or gauge', all: 'wrenches and gauges' },
  path: '/api/register/instruments',
  roles: ['manager', 'owner'],
  content: InstrumentContent,
  facts: InstrumentFacts,
})

/**
 * A wheel that was torqued or checked with a wrench: its last round with it. `telephone` only where the owner of the vehicle
 * agreed to be called.
 */
export const TorquedWheel = z.strictObject({
  orderId: Id,
  orderNumber: z.string(),
  wheel: WheelPosition,
  torquedAt: Instant,
  by: z.string(),
  clicks: z.int(),
  vehicle: z.string(),
  plate: z.nullable(z.string()),
  customer: z.string(),
  mayCall: z.boolean(),
  telephone: z.nullable(z.string()),
})
export type TorquedWheel = z.infer<typeof TorquedWheel>

export const listTorquedWheels = endpoint({
  operationId: 'listTorquedWheels',
  summary:
    'Every wheel torqued or checked with a wrench since a day, newest first, withdrawn rounds left out: for a wrench that was found out of calibration.',
  method: 'GET',
  path: '/api/register/instruments/:id/torqued-wheels',
  access: { who: 'desk', roles: ['manager', 'owner'] },
  params: z.strictObject({ id: Id }),
  query: z.strictObject({ since: Day }),
  replies: { 200: z.strictObject({ wheels: z.array(TorquedWheel) }) },
  problems: ['RECORD_NOT_FOUND'],
})

/** Every wrench and gauge, as CSV and back. */
export const instrumentsCsv = csvEndpoints({
  name: 'Instruments',
  words: 'wrenches and gauges',
  path: '/api/register/instruments',
  roles: ['manager', 'owner'],
})
