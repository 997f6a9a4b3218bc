import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { Customer } from './customers.ts'
import { endpoint } from './endpoint.ts'
import { Day, Id, Instant } from './identity.ts'
import { Move } from './orders.ts'
import { Vehicle } from './vehicles.ts'

/** A visit in the vehicle's own history. Of an earlier owner's visit nothing personal is here, and `orderId` is `null`. */
export const PastVisit = z.strictObject({
  orderId: z.nullable(Id),
  number: z.string(),
  openedAt: Instant,
  isOpen: z.boolean(),
  ofThisOwner: z.boolean(),
  isComeback: z.boolean(),
  /** The cause in words; `null`: none was found, or it is not confirmed. */
  cause: z.nullable(z.string()),
  done: z.array(z.string()),
})
export type PastVisit = z.infer<typeof PastVisit>

/** What was declined or put off and not settled since. `totalCents` is `null` where it was withheld or erased. */
export const OpenOffer = z.strictObject({
  number: z.string(),
  words: z.string(),
  answer: z.enum(['declined', 'deferred']),
  deferredUntil: z.nullable(z.string()),
  answeredAt: Instant,
  totalCents: z.nullable(z.int()),
})
export type OpenOffer = z.infer<typeof OpenOffer>

/** A pressure at an earlier visit, psi; `comparedPsi`: as the same air shows it at 68 °F, `null` where that is not known. */
export const TimedReading = z.strictObject({
  number: z.string(),
  wheel: WheelPosition,
  when: z.enum(['received', 'left']),
  at: Instant,
  psi: z.number(),
  comparedPsi: z.nullable(z.number()),
})
export type TimedReading = z.infer<typeof TimedReading>

/** What a tire lacked when the vehicle last came, in words: how much of it is colder air, and how much is lost. */
export const WheelLack = z.strictObject({ wheel: WheelPosition, words: z.string() })

/** A sensor that this shop fitted. */
export const FittedSensor = z.strictObject({
  number: z.string(),
  wheel: WheelPosition,
  sensorId: z.string(),
  at: Instant,
  /** By the shop's terms of today: whether it is covered, the last day, and what the odometer may read at most. */
  warranty: z.strictObject({
    cover: z.enum(['covered', 'ended', 'person-decides']),
    until: Day,
    untilMiles: z.nullable(z.int()),
  }),
})
export type FittedSensor = z.infer<typeof FittedSensor>

export const VehiclePage = z.strictObject({
  asOf: Instant,
  vehicle: Vehicle,
  customer: Customer,
  openOrder: z.nullable(z.strictObject({ orderId: Id, number: z.string(), moves: z.array(Move) })),
  /** Newest first. */
  visits: z.array(PastVisit),
  offers: z.array(OpenOffer),
  readings: z.array(TimedReading),
  /** Of the newest visit on which a tire was gauged; `null` where there is none. */
  lacks: z.nullable(z.strictObject({ number: z.string(), at: Instant, wheels: z.array(WheelLack) })),
  /** The sensors that we fitted last at each wheel. */
  fitted: z.array(FittedSensor),
  /** By axle, psi: the label's figure and where the light comes on; `null` where no sheet says. */
  label: z.nullable(z.strictObject({ front: z.number(), rear: z.number(), spare: z.nullable(z.number()) })),
  warnAt: z.nullable(z.strictObject({ front: z.number(), rear: z.number() })),
})
export type VehiclePage = z.infer<typeof VehiclePage>

export const getVehiclePage = endpoint({
  operationId: 'getVehiclePage',
  summary:
    "A vehicle's own page: its open order, earlier visits, what was put off, pressures over time, sensors that we fitted.",
  method: 'GET',
  path: '/api/vehicles/:vehicleId/page',
  access: { who: 'desk' },
  params: z.strictObject({ vehicleId: Id }),
  replies: { 200: VehiclePage },
  problems: ['VEHICLE_NOT_FOUND'],
})
