import * as z from 'zod/mini'

/**
 * The evidence of a version-1 `diagnosis.issued`, frozen by value: it names nothing that may change, so that an order
 * of that time is read forever as it was written.
 */
const LoadClass = z.enum(['SL', 'XL', 'LT-C', 'LT-D', 'LT-E'])
const WheelPosition = z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])
const text = z.string().check(z.minLength(1), z.maxLength(200))
const SensorId = z.string().check(z.regex(/^[0-9A-Fa-f]{1,16}$/))
const count = z.int().check(z.gte(0), z.lte(999))
const days = z.number().check(z.gte(0), z.lte(36_500))
const megahertz = z.number().check(z.gte(1), z.lte(10_000))

const perAxle = <T extends z.core.$ZodType>(schema: T) =>
  z.strictObject({ front: z.nullish(schema), rear: z.nullish(schema), spare: z.nullish(schema) })

const Units = z.strictObject({
  pressure: z.enum(['psi', 'kPa', 'bar']),
  temperature: z.enum(['F', 'C']),
  altitude: z.enum(['ft', 'm']),
})

const LightBehavior = z.enum([
  'off',
  'solid',
  'flash-then-solid',
  'intermittent-cold',
  'intermittent-other',
  'flash-continuous',
])

const VehicleEvidence = z.strictObject({
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
  sidewallMaximum: z.nullish(perAxle(z.number().check(z.positive()))),
})

const LightEvidence = z.strictObject({
  lampCheck: z.nullish(z.enum(['lights', 'dark'])),
  reported: z.nullish(LightBehavior),
  behavior: z.nullish(LightBehavior),
})

const TireDamage = z.enum(['bulge', 'cord-showing', 'cut-to-cord', 'puncture', 'run-low-dust'])

const FastenerDamage = z.enum([
  'stud-missing',
  'stud-broken',
  'fastener-missing',
  'thread-stripped',
  'seat-wrong',
])

const ValveKind = z.enum(['snap-in', 'clamp-in', 'plain'])

const StemCondition = z.enum(['sound', 'corroded', 'cracked', 'leaks'])

const WheelEvidence = z.strictObject({
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
  fastenerDamage: z.nullish(z.array(FastenerDamage).check(z.maxLength(20))),
  learnRefusals: z.nullish(count),
})

const CodeClass = z.enum([
  'no-signal',
  'low-battery',
  'low-pressure',
  'receiver',
  'communication',
  'learn-incomplete',
  'lamp-circuit',
])

const perWheel = <T extends z.core.$ZodType>(schema: T) =>
  z.strictObject({
    LF: z.nullish(schema),
    RF: z.nullish(schema),
    RR: z.nullish(schema),
    LR: z.nullish(schema),
    SP: z.nullish(schema),
  })

const ModuleCode = z.strictObject({
  class: CodeClass,
  wheel: z.nullish(WheelPosition),
  text: z.nullish(text),
})

const ControlModuleEvidence = z.strictObject({
  state: z.nullish(z.enum(['read', 'blank', 'unreadable'])),
  notation: z.nullish(z.enum(['hex', 'decimal'])),
  ids: z.nullish(perWheel(z.string().check(z.regex(/^[0-9A-Fa-f]{1,20}$/)))),
  codes: z.nullish(z.array(ModuleCode).check(z.maxLength(100))),
})

const EventKind = z.enum([
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

const EventEvidence = z.strictObject({
  kind: EventKind,
  happened: z.nullish(z.boolean()),
  wheel: z.nullish(WheelPosition),
  daysAgo: z.nullish(days),
})

const SurroundingsEvidence = z.strictObject({
  outdoor: z.nullish(z.number()),
  tires: z.nullish(z.enum(['cold', 'driven', 'indoor-warmed'])),
  tireTemperature: z.nullish(z.number()),
  altitude: z.nullish(z.number()),
  overnightLow: z.nullish(z.number()),
  minutesDriven: z.nullish(z.number().check(z.gte(0), z.lte(100_000))),
  lastSet: z.nullish(z.strictObject({ temperature: z.nullish(z.number()), altitude: z.nullish(z.number()) })),
})

const HistoryEvidence = z.strictObject({
  earlierReadings: z.nullish(
    z
      .array(
        z.strictObject({
          wheel: WheelPosition,
          pressure: z.number(),
          temperature: z.nullish(z.number()),
          daysAgo: days,
        }),
      )
      .check(z.maxLength(500)),
  ),
  idsOnOtherVehicles: z.nullish(z.array(SensorId).check(z.maxLength(100))),
  ourWorkOn: z.nullish(z.array(WheelPosition).check(z.maxLength(20))),
  partsUnderWarranty: z.nullish(z.array(WheelPosition).check(z.maxLength(20))),
})

export const EvidenceVersion1 = z.strictObject({
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
