import { SensorId } from '@bayledger/reckoning/evidence/evidence'
import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import { Distance, Pressure, Torque } from '@bayledger/reckoning/quantity'
import { SafetyFigure, Surroundings, TemperatureQuality } from '@bayledger/reckoning/sheet'
import { JobPlan, StepKey } from '@bayledger/reckoning/step'
import { BalanceLeft } from '@bayledger/reckoning/wheel/balance-left'
import { WheelPosition } from '@bayledger/reckoning/wheels'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { odometerReadOnce } from '../../odometer-read-once.ts'
import { bayRoles, judgeRoles, roles } from '../../role.ts'
import { SecondPerson } from '../../second-person.ts'
import { PersonalDigest } from '../../side-kinds.ts'
import { Id, Instant, plainText } from '../../text.ts'
import { Timed, untimed } from '../../timed.ts'
import { GaugeUsed } from '../arrival/kinds.ts'
import { closingToVersion2 } from './closing-version-1.ts'
import { PlanVersion1, planToVersion2 } from './plan-version-1.ts'
import { PlanVersion2, planToVersion3 } from './plan-version-2.ts'
import { PlanVersion3, planToVersion4 } from './plan-version-3.ts'
import { PlanVersion4, planToVersion5 } from './plan-version-4.ts'
import { TiresSeen } from './tires-seen.ts'

const relearn = {
  stepKey: StepKey,
  method: z.enum(['automatic', 'stationary', 'connector', 'reset']),
  confirmed: z.array(WheelPosition),
  result: z.enum(['learned', 'refused', 'learns-while-driven']),
}

const fitted = {
  stepKey: StepKey,
  wheel: WheelPosition,
  sensorId: SensorId,
  valve: z.enum(['snap-in', 'clamp-in']),
  kitPart: plainText(60),
  torque: Torque,
}

const drive = {
  stepKey: StepKey,
  /** As the driver says them: those at a speed at which they count. */
  minutes: z.number().check(z.gte(0), z.lte(600)),
  odometerOut: Distance,
  odometerIn: Distance,
  lightAtEnd: z.enum(['off', 'solid', 'flash-then-solid']),
  lampCheckAfter: z.enum(['lights-and-goes-out', 'stays-lit', 'dark']),
}

const inWords = plainText(120)
const closedBy = <Value extends z.ZodMiniType>(value: Value) =>
  z.strictObject({ stepKey: StepKey, value: z.nullable(value) })

export const workKinds = {
  'plan.issued': kind(z.strictObject({ plan: JobPlan, decisionId: z.nullable(Id) }), {
    earlier: [
      earlierVersion(PlanVersion1, planToVersion2),
      earlierVersion(PlanVersion2, planToVersion3),
      earlierVersion(PlanVersion3, planToVersion4),
      earlierVersion(PlanVersion4, planToVersion5),
    ],
    roles: [],
    writtenBy: ['system'],
    writtenWhere: 'server',
    strikable: 'no',
  }),
  'figure.confirmed': kind(
    z.strictObject({ figure: SafetyFigure, reference: plainText(200), stepKey: z.nullable(StepKey) }),
    { roles: judgeRoles },
  ),
  'part.promised': kind(z.strictObject({ partCode: plainText(60), promisedAt: Instant }), { roles }),
  'part.drawn': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: z.nullable(WheelPosition),
      partNumber: plainText(60),
      lot: z.nullable(plainText(60)),
      madeMonth: z.nullable(z.string().check(z.regex(/^\d{4}-(0[1-9]|1[0-2])$/))),
      quantity: z.int().check(z.positive(), z.lte(999)),
      matches: z.strictObject({
        frequencyMHz: z.nullable(z.number()),
        stem: z.nullable(z.enum(['snap-in', 'clamp-in'])),
      }),
    }),
    { roles: bayRoles },
  ),
  'wheel.removed': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: WheelPosition,
      remark: z.nullable(z.enum(['seized', 'over-tight', 'stud-damaged'])),
    }),
    { roles: bayRoles, strikable: 'second-person' },
  ),
  'wheel.mounted': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: WheelPosition,
      cameFrom: WheelPosition,
      seatsMatch: z.literal(true),
      handStarted: z.literal(true),
    }),
    { roles: bayRoles },
  ),
  'sensor.programmed': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: WheelPosition,
      sensorId: SensorId,
      identity: z.enum(['copy', 'new']),
      frequencyMHz: z.number(),
      readBack: z.literal(true),
    }),
    { roles: bayRoles },
  ),
  'sensor.fitted': kind(
    /** `kitLot`: as marked on the kit; the sensor's own lot is in `part.drawn`. */
    z.strictObject({ ...fitted, kitLot: z.nullable(plainText(60)) }),
    {
      earlier: [earlierVersion(z.strictObject(fitted), (payload) => ({ ...payload, kitLot: null }))],
      roles: bayRoles,
    },
  ),
  /** The gas of a sealant was let out and replaced by air, outdoors; a second person knew of it. */
  'sealant.purged': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: WheelPosition,
      outdoors: z.literal(true),
      times: z.literal(workLimits.purgeTimes),
      aware: SecondPerson,
    }),
    { roles: bayRoles, agreedBy: roles },
  ),
  'sensor.broken': kind(z.strictObject({ wheel: WheelPosition, how: plainText(200) }), {
    roles: bayRoles,
    strikable: 'second-person',
  }),
  'leak.checked': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: WheelPosition,
      tight: z.boolean(),
      where: z.nullable(z.enum(['stem', 'core', 'bead', 'tread', 'sidewall', 'rim'])),
    }),
    { roles: bayRoles },
  ),
  'pressure.set': kind(
    z.strictObject({
      stepKey: StepKey,
      wheel: WheelPosition,
      target: z.strictObject({
        psi: z.number(),
        placardPsi: z.number(),
        quality: TemperatureQuality,
        capped: z.boolean(),
      }),
      asLeft: Pressure,
      instrument: GaugeUsed,
      surroundings: Surroundings,
    }),
    { roles: bayRoles },
  ),
  /** `timed`: from the start of the procedure until the vehicle answered. */
  'relearn.done': kind(z.strictObject({ ...relearn, timed: Timed }), {
    earlier: [earlierVersion(z.strictObject(relearn), untimed)],
    roles: bayRoles,
  }),
  /** The vehicle leaves for a drive: from now until `drive.done` it is out, for every tablet and for the desk. */
  'drive.left': kind(z.strictObject({ stepKey: StepKey, odometerOut: Distance }), { roles }),
  /** `timed`: from leaving until coming back. `odometerConfirmed`: an unlikely one was read twice. */
  'drive.done': kind(z.strictObject({ ...drive, timed: Timed, odometerConfirmed: z.boolean() }), {
    earlier: [
      earlierVersion(z.strictObject(drive), untimed),
      earlierVersion(z.strictObject({ ...drive, timed: Timed }), odometerReadOnce),
    ],
    roles,
  }),
  /** `value`: of a balanced wheel its figures, of a rotation what the tires say, of other steps words. */
  'step.closed': kind(closedBy(z.union([inWords, BalanceLeft, TiresSeen])), {
    earlier: [
      earlierVersion(closedBy(inWords), closingToVersion2),
      // What was said of a rotation until then stays the words that it was.
      earlierVersion(closedBy(z.union([inWords, BalanceLeft])), (payload) => payload),
    ],
    roles: bayRoles,
  }),
  'step.set_aside': kind(z.strictObject({ stepKey: StepKey, reason: PersonalDigest }), {
    roles: bayRoles,
    sides: ['personal'],
  }),
}
