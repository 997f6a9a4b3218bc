import * as z from 'zod/mini'
import { isOfASensor } from '../sensor/sensor-id.ts'
import { LoadClass } from '../sheet.ts'
import { WheelPosition } from '../wheels.ts'

/**
 * What was seen of a vehicle, before anyone judges it. A field that is absent or null was not checked; one
 * listed in `notPossible` could not be checked. Neither is ever read as no, fine or zero.
 */
const text = z.string().check(z.minLength(1), z.maxLength(200))
/** A sensor's ID as hexadecimal text, leading zeros kept. */
export const SensorId = z.string().check(z.regex(/^[0-9A-Fa-f]{1,16}$/), z.refine(isOfASensor))
const count = z.int().check(z.gte(0), z.lte(999))
const days = z.number().check(z.gte(0), z.lte(36_500))
const megahertz = z.number().check(z.gte(1), z.lte(10_000))

const perAxle = <T extends z.core.$ZodType>(schema: T) =>
  z.strictObject({ front: z.nullish(schema), rear: z.nullish(schema), spare: z.nullish(schema) })

export const Units = z.strictObject({
  pressure: z.enum(['psi', 'kPa', 'bar']),
  temperature: z.enum(['F', 'C']),
  altitude: z.enum(['ft', 'm']),
})
export type Units = z.infer<typeof Units>

export const LightBehavior = z.enum([
  'off',
  'solid',
  'flash-then-solid',
  'intermittent-cold',
  'intermittent-other',
  'flash-continuous',
])
export type LightBehavior = z.infer<typeof LightBehavior>

/** What the body plies are made of, as the sidewall prints it. */
export const Casing = z.enum(['steel', 'polyester'])
export type Casing = z.infer<typeof Casing>

export const VehicleEvidence = z.strictObject({
  system: z.nullish(z.enum(['direct', 'indirect', 'none', 'unknown'])),
  sensorFrequencyMHz: z.nullish(megahertz),
  pressureDisplay: z.nullish(z.boolean()),
  spare: z.nullish(z.enum(['none', 'temporary', 'full-size'])),
  spareMonitored: z.nullish(z.boolean()),
  sensorMounting: z.nullish(z.enum(['valve', 'band'])),
  placard: z.nullish(
    z.strictObject({
      front: z.nullish(z.number().check(z.positive())),
      rear: z.nullish(z.number().check(z.positive())),
      spare: z.nullish(z.number().check(z.positive())),
      verified: z.nullish(z.boolean()),
    }),
  ),
  warnAt: z.nullish(perAxle(z.number().check(z.positive()))),
  loadClass: z.nullish(perAxle(LoadClass)),
  casing: z.nullish(perAxle(Casing)),
  sidewallMaximum: z.nullish(perAxle(z.number().check(z.positive()))),
})
export type VehicleEvidence = z.infer<typeof VehicleEvidence>

export const LightEvidence = z.strictObject({
  lampCheck: z.nullish(z.enum(['lights', 'dark'])),
  reported: z.nullish(LightBehavior),
  behavior: z.nullish(LightBehavior),
})
export type LightEvidence = z.infer<typeof LightEvidence>

export const TireDamage = z.enum(['bulge', 'cord-showing', 'cut-to-cord', 'puncture', 'run-low-dust'])
export type TireDamage = z.infer<typeof TireDamage>

/** Where an object went through the tread side of a tire: the crown is the tread between the shoulder grooves. */
export const PuncturePlace = z.enum(['crown', 'shoulder', 'sidewall'])
export type PuncturePlace = z.infer<typeof PuncturePlace>

/** One hole. A width is of the hole once the object is out, in millimeters. */
export const Puncture = z.strictObject({
  place: z.nullish(PuncturePlace),
  millimeters: z.nullish(z.number().check(z.gt(0), z.lte(50))),
  overlapsRepair: z.nullish(z.boolean()),
})
export type Puncture = z.infer<typeof Puncture>

/** A tire looked at from inside, off the wheel. */
export const InsideTire = z.enum(['sound', 'run-low-damage', 'cord', 'separation'])
export type InsideTire = z.infer<typeof InsideTire>

export const FastenerDamage = z.enum([
  'stud-missing',
  'stud-broken',
  'fastener-missing',
  'thread-stripped',
  'seat-wrong',
])
export type FastenerDamage = z.infer<typeof FastenerDamage>

export const ValveKind = z.enum(['snap-in', 'clamp-in', 'plain'])
export type ValveKind = z.infer<typeof ValveKind>

export const StemCondition = z.enum(['sound', 'corroded', 'cracked', 'leaks'])
export type StemCondition = z.infer<typeof StemCondition>

export const WheelEvidence = z.strictObject({
  mounted: z.nullish(z.enum(['road', 'temporary-spare'])),
  gauge: z.nullish(z.number()),
  answer: z.nullish(z.enum(['answered', 'silent', 'not-tried'])),
  tries: z.nullish(count),
  id: z.nullish(SensorId),
  sensorPressure: z.nullish(z.number()),
  sensorTemperature: z.nullish(z.number()),
  battery: z.nullish(z.enum(['ok', 'low', 'not-reported'])),
  frequencyMHz: z.nullish(megahertz),
  followsPressure: z.nullish(z.boolean()),
  valve: z.nullish(ValveKind),
  stem: z.nullish(StemCondition),
  sensorAgeMonths: z.nullish(count),
  tireAgeYears: z.nullish(z.number().check(z.gte(0), z.lte(100))),
  treadDepth32nds: z.nullish(z.number().check(z.gte(0), z.lte(64))),
  sealantSeen: z.nullish(z.boolean()),
  tireDamage: z.nullish(z.array(TireDamage).check(z.maxLength(20))),
  punctures: z.nullish(z.array(Puncture).check(z.maxLength(20))),
  insideTire: z.nullish(InsideTire),
  fastenerDamage: z.nullish(z.array(FastenerDamage).check(z.maxLength(20))),
  learnRefusals: z.nullish(count),
})
export type WheelEvidence = z.infer<typeof WheelEvidence>

export const CodeClass = z.enum([
  'no-signal',
  'low-battery',
  'low-pressure',
  'receiver',
  'communication',
  'learn-incomplete',
  'lamp-circuit',
])
export type CodeClass = z.infer<typeof CodeClass>

const perWheel = <T extends z.core.$ZodType>(schema: T) =>
  z.strictObject({
    LF: z.nullish(schema),
    RF: z.nullish(schema),
    RR: z.nullish(schema),
    LR: z.nullish(schema),
    SP: z.nullish(schema),
  })

/** A stored trouble code as the vehicle shows it, with the class it was sorted into. */
export const ModuleCode = z.strictObject({
  class: CodeClass,
  wheel: z.nullish(WheelPosition),
  text: z.nullish(text),
})
export type ModuleCode = z.infer<typeof ModuleCode>

export const ControlModuleEvidence = z.strictObject({
  state: z.nullish(z.enum(['read', 'blank', 'unreadable'])),
  notation: z.nullish(z.enum(['hex', 'decimal'])),
  ids: z.nullish(perWheel(z.string().check(z.regex(/^[0-9A-Fa-f]{1,20}$/), z.refine(isOfASensor)))),
  codes: z.nullish(z.array(ModuleCode).check(z.maxLength(100))),
})
export type ControlModuleEvidence = z.infer<typeof ControlModuleEvidence>

export const EventKind = z.enum([
  'rotation',
  'tires-changed',
  'seasonal-wheels',
  'used-wheel',
  'aftermarket-wheels',
  'sensor-fitted-today',
  'sensor-replaced-elsewhere',
  'serviced-today',
  'battery-disconnected',
  'control-module-work',
  'collision',
  'sealant',
  'driven-low',
  'topped-up-before-arrival',
  'air-added',
  'moved-since-reading',
  'dash-cam-added',
  'charger-added',
  'window-film-added',
  'one-place-only',
  'chains',
  'packed-snow',
])
export type EventKind = z.infer<typeof EventKind>

export const EventEvidence = z.strictObject({
  kind: EventKind,
  happened: z.nullish(z.boolean()),
  wheel: z.nullish(WheelPosition),
  daysAgo: z.nullish(days),
})
export type EventEvidence = z.infer<typeof EventEvidence>

export const SurroundingsEvidence = z.strictObject({
  outdoor: z.nullish(z.number()),
  tires: z.nullish(z.enum(['cold', 'driven', 'indoor-warmed'])),
  tireTemperature: z.nullish(z.number()),
  altitude: z.nullish(z.number()),
  overnightLow: z.nullish(z.number()),
  minutesDriven: z.nullish(z.number().check(z.gte(0), z.lte(100_000))),
  lastSet: z.nullish(z.strictObject({ temperature: z.nullish(z.number()), altitude: z.nullish(z.number()) })),
})
export type SurroundingsEvidence = z.infer<typeof SurroundingsEvidence>

export const HistoryEvidence = z.strictObject({
  earlierReadings: z.nullish(
    z
      .array(
        z.strictObject({
          wheel: WheelPosition,
          pressure: z.number(),
          temperature: z.nullish(z.number()),
          altitude: z.nullish(z.number()),
          gauge: z.nullish(text),
          daysAgo: days,
        }),
      )
      .check(z.maxLength(500)),
  ),
  idsOnOtherVehicles: z.nullish(z.array(SensorId).check(z.maxLength(100))),
  ourWorkOn: z.nullish(z.array(WheelPosition).check(z.maxLength(20))),
  partsUnderWarranty: z.nullish(z.array(WheelPosition).check(z.maxLength(20))),
})
export type HistoryEvidence = z.infer<typeof HistoryEvidence>

export const Evidence = z.strictObject({
  units: Units,
  vehicle: z.nullish(VehicleEvidence),
  light: z.nullish(LightEvidence),
  wheels: z.nullish(perWheel(WheelEvidence)),
  controlModule: z.nullish(ControlModuleEvidence),
  strayIds: z.nullish(z.array(SensorId).check(z.maxLength(100))),
  events: z.nullish(z.array(EventEvidence).check(z.maxLength(200))),
  surroundings: z.nullish(SurroundingsEvidence),
  history: z.nullish(HistoryEvidence),
  notPossible: z.nullish(z.array(z.strictObject({ field: text, why: text })).check(z.maxLength(300))),
})
export type Evidence = z.infer<typeof Evidence>
