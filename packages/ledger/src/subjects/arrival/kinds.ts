import {
  Casing,
  FastenerDamage,
  LightBehavior,
  ModuleCode,
  SensorId,
  StemCondition,
  TireDamage,
  ValveKind,
} from '@bayledger/reckoning/evidence/evidence'
import { Pressure, Temperature } from '@bayledger/reckoning/quantity'
import { StepKey } from '@bayledger/reckoning/step'
import { wearsSeen } from '@bayledger/reckoning/tire/wear-hints'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { bayRoles, roles } from '../../role.ts'
import { Id, plainText } from '../../text.ts'
import { Timed, untimed } from '../../timed.ts'
import { SidewallPrint } from './sidewall.ts'

/** The whole-vehicle check before anything is touched, or the one after the work. */
export const Phase = z.enum(['arrival', 'closing'])
export type Phase = z.infer<typeof Phase>

/**
 * A gauge at the time of the reading. `offsetPsi`: what it shows more than the master gauge; the reading counts corrected by
 * it. Absent in entries from before this field existed, which count as they were read; those name the same in `correctionPsi`.
 */
export const GaugeUsed = z.strictObject({
  instrumentId: Id,
  code: plainText(20),
  correctionPsi: z.number(),
  offsetPsi: z.optional(z.number().check(z.gte(-20), z.lte(20))),
})
export type GaugeUsed = z.infer<typeof GaugeUsed>

/** How many times a sensor was tried before the result was recorded. */
const tries = z.int().check(z.gte(1), z.lte(99))

/** What a wheel's sensor sent; for a silent one, only the number of tries. */
export const SensorAnswer = z.discriminatedUnion('answer', [
  z.strictObject({
    answer: z.literal('answered'),
    tries,
    id: z.nullable(SensorId),
    pressure: z.nullable(Pressure),
    temperature: z.nullable(Temperature),
    battery: z.nullable(z.enum(['ok', 'low', 'not-reported'])),
    frequencyMHz: z.nullable(z.number().check(z.gte(1), z.lte(10_000))),
    followsPressure: z.nullable(z.boolean()),
    /** Relearns that refused this sensor while others were learned; absent in entries from before this field existed. */
    learnRefusals: z.optional(z.nullable(z.int().check(z.gte(0), z.lte(99)))),
  }),
  z.strictObject({ answer: z.literal('silent'), tries }),
  z.strictObject({ answer: z.literal('not-tried') }),
])
export type SensorAnswer = z.infer<typeof SensorAnswer>

export const CouldNotBeChecked = z.strictObject({ field: plainText(60), why: plainText(200) })

const stepKey = z.nullable(StepKey)

/** Of a tread, in 32nds of an inch. */
const depth = z.number().check(z.gte(0), z.lte(40))

const tireSeen = {
  when: z.enum(['arrival', 'inside']),
  stepKey,
  wheel: WheelPosition,
  valve: z.nullable(ValveKind),
  stem: z.nullable(StemCondition),
  treadDepth32nds: z.nullable(depth),
  tireAgeYears: z.nullable(z.number().check(z.gte(0), z.lte(60))),
  sensorAgeMonths: z.nullable(z.int().check(z.gte(0), z.lte(400))),
  sealantSeen: z.nullable(z.boolean()),
  tireDamage: z.nullable(z.array(TireDamage).check(z.maxLength(20))),
  fastenerDamage: z.nullable(z.array(FastenerDamage).check(z.maxLength(20))),
}

const hole = {
  /** Of the hole, the object being out; in millimeters. */
  millimeters: z.nullable(z.number().check(z.positive(), z.lte(999))),
  /** From straight through the tread, in degrees. */
  degrees: z.nullable(z.number().check(z.gte(0), z.lte(90))),
  overlapsRepair: z.nullable(z.boolean()),
}
const holePlace = z.enum(['crown', 'shoulder', 'sidewall'])

/** One hole through a tire, seen from outside or inside. What nobody has looked at is `null`. */
export const PunctureRecord = z.strictObject({
  ...hole,
  place: z.nullable(holePlace),
  /** Beside the holes that are named before it: the distance to the nearest, and whether two repair units would overlap. */
  fromOthers: z.optional(
    z.strictObject({
      millimeters: z.nullable(z.number().check(z.positive(), z.lte(999))),
      unitsOverlap: z.nullable(z.boolean()),
    }),
  ),
})
export type PunctureRecord = z.infer<typeof PunctureRecord>

const inside = z.nullable(
  z.enum(['sound', 'run-low-damage', 'cord', 'separation', 'earlier-repair', 'foreign-body']),
)

/** Absent: nobody looked for holes. */
const punctures = z.optional(z.array(PunctureRecord).check(z.maxLength(20)))

/** Until version 4 a hole had a place, and nothing was said of its distance to another. */
const singleHoles = z.optional(z.array(z.strictObject({ ...hole, place: holePlace })).check(z.maxLength(20)))

const sidewall = {
  /** Size with load index and speed symbol, as the tire says it. Absent: nobody read it. */
  sizeSeen: z.optional(SidewallPrint),
  /** The whole identification number, or its date code alone. Absent: nobody read it. */
  dateCodeSeen: z.optional(SidewallPrint),
  /** The body plies, as the sidewall says. Absent: nobody read it. */
  casing: z.optional(Casing),
}

const wear = {
  /** Depths from one shoulder to the other, in 32nds of an inch; inner is toward the vehicle. Absent: nobody read them. */
  treadAcross: z.optional(z.strictObject({ inner: depth, middle: depth, outer: depth })),
  /** What is seen or felt around the tire. Absent: nobody looked for it. */
  wearSeen: z.optional(z.enum(wearsSeen)),
}

const telltale = {
  phase: Phase,
  stepKey,
  lampCheck: z.nullable(z.enum(['lights', 'dark'])),
  behavior: z.nullable(LightBehavior),
}

export const arrivalKinds = {
  /** Each member may be absent (null): an absent one never erases what an earlier entry recorded. */
  'wheel.checked': kind(
    z.strictObject({
      phase: Phase,
      stepKey,
      wheel: WheelPosition,
      mounted: z.nullable(z.enum(['road', 'temporary-spare'])),
      gauge: z.nullable(z.strictObject({ pressure: Pressure, instrument: GaugeUsed })),
      sensor: z.nullable(SensorAnswer),
      notPossible: z.array(CouldNotBeChecked).check(z.maxLength(20)),
    }),
    { roles: bayRoles },
  ),
  'tire.inspected': kind(
    z.strictObject({
      ...tireSeen,
      ...sidewall,
      ...wear,
      inside,
      punctures,
    }),
    {
      roles,
      earlier: [
        earlierVersion(
          z.strictObject({
            ...tireSeen,
            inside: z.nullable(z.enum(['sound', 'run-low-damage', 'earlier-repair', 'foreign-body'])),
          }),
          (payload) => payload,
        ),
        earlierVersion(z.strictObject({ ...tireSeen, inside, punctures: singleHoles }), (payload) => payload),
        earlierVersion(
          z.strictObject({ ...tireSeen, ...sidewall, inside, punctures: singleHoles }),
          (payload) => payload,
        ),
        earlierVersion(z.strictObject({ ...tireSeen, ...sidewall, inside, punctures }), (payload) => payload),
      ],
    },
  ),
  'module.read': kind(
    z.strictObject({
      phase: Phase,
      stepKey,
      state: z.enum(['read', 'blank', 'unreadable']),
      notation: z.nullable(z.enum(['hex', 'decimal'])),
      ids: z.partialRecord(WheelPosition, SensorId),
      codes: z.array(ModuleCode).check(z.maxLength(100)),
      strayIds: z.array(SensorId).check(z.maxLength(100)),
      why: z.nullable(plainText(200)),
    }),
    { roles: bayRoles },
  ),
  /** `timed`: for how long the light was watched. */
  'telltale.observed': kind(z.strictObject({ ...telltale, timed: Timed }), {
    earlier: [earlierVersion(z.strictObject(telltale), untimed)],
    roles: bayRoles,
  }),
  /** A check that the findings call for is not made, and why. `field`: its path in the evidence. */
  'check.skipped': kind(CouldNotBeChecked, { roles }),
}
