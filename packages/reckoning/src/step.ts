import * as z from 'zod/mini'
import { Pressure, Torque } from './quantity.ts'
import { SafetyFigure } from './sheet.ts'
import { WheelPosition } from './wheels.ts'

/** A step's stable name, such as `RR.studs.torque` or `vehicle.relearn`: a later deploy never changes it. */
export const StepKey = z.string().check(z.regex(/^[A-Z][A-Za-z]*(\.[a-z-]+)+$|^vehicle(\.[a-z-]+)+$/))
export type StepKey = z.infer<typeof StepKey>

/** The one figure that a step shows, with whose figure it is. */
export const StepFigure = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('torque'), torque: Torque, source: z.string() }),
  z.strictObject({ kind: z.literal('placard'), psi: z.number(), source: z.string() }),
  z.strictObject({ kind: z.literal('pressure'), pressure: Pressure, source: z.string() }),
  z.strictObject({ kind: z.literal('frequency'), megahertz: z.number(), source: z.string() }),
  z.strictObject({ kind: z.literal('count'), count: z.number(), unit: z.string(), source: z.string() }),
])
export type StepFigure = z.infer<typeof StepFigure>

/** The entry kind that closes a step; `step.closed` only where no other kind fits. */
export const ClosingKind = z.enum([
  'part.drawn',
  'sensor.programmed',
  'wheel.removed',
  'wheel.mounted',
  'sensor.fitted',
  'leak.checked',
  'pressure.set',
  'studs.torqued',
  'torque.checked',
  'relearn.done',
  'wheel.checked',
  'module.read',
  'telltale.observed',
  'drive.done',
  'tire.inspected',
  'figure.confirmed',
  'step.closed',
])
export type ClosingKind = z.infer<typeof ClosingKind>

/** What a step is. A step's key only names it; what it means is said by this code and by the step's other fields. */
export const StepCode = z.enum([
  'confirm-placard',
  'confirm-stud-torque',
  'confirm-frequency',
  'find-leak',
  'match-tire',
  'match-sensor',
  'program-sensor',
  'read-other-wheel',
  'check-tires-for-rotation',
  'take-spare-out',
  'stow-spare',
  'take-wheel-off',
  'open-tire',
  'look-inside',
  'judge-leak',
  'repair-leak',
  'fit-sensor',
  'renew-stem',
  'read-in-rim',
  'seat-tire',
  'torque-core',
  'check-leaks',
  'balance-wheel',
  'put-wheel-on',
  'torque-studs',
  'torque-after-miles',
  'check-torque',
  'set-pressure',
  'relearn',
  'read-sensor',
  'compare-stored',
  'proof-drive',
  'see-light',
  'last-look',
  'other',
])
export type StepCode = z.infer<typeof StepCode>

/** The rounds of tightening, each a step of its own: half the figure, the figure, the figure again. */
export const torqueRounds = ['half', 'full', 'again'] as const
export type TorqueRound = (typeof torqueRounds)[number]

/** How high the vehicle is during a step: on its wheels, lifted clear, or lowered until the tires just hold. */
export const StepHeight = z.enum(['floor', 'lifted', 'touching'])
export type StepHeight = z.infer<typeof StepHeight>

/** One line of the job plan. `does` is at most six words or so; `how` may take a sentence or two. */
export const Step = z.strictObject({
  stepKey: StepKey,
  code: StepCode,
  wheel: z.nullable(WheelPosition),
  does: z.string().check(z.minLength(1), z.maxLength(80)),
  how: z.string().check(z.maxLength(1_200)),
  closedBy: ClosingKind,
  round: z.nullable(z.enum(torqueRounds)),
  opensTire: z.boolean(),
  height: StepHeight,
  figure: z.nullable(StepFigure),
  needs: z.array(z.enum(['value', 'photo', 'second-person'])),
  /** Step keys that must be closed first. */
  waitsFor: z.array(StepKey),
  /** A safety figure that a second person must confirm first, where the sheet's is unverified. */
  unverified: z.nullable(SafetyFigure),
  caution: z.nullable(z.string()),
  bundleKey: z.nullable(z.string()),
  /** The place that the wheel of this step came from, where it is not its own: after a rotation. */
  comesFrom: z.optional(WheelPosition),
})
export type Step = z.infer<typeof Step>

export const JobPlan = z.strictObject({ planVersion: z.int().check(z.positive()), steps: z.array(Step) })
export type JobPlan = z.infer<typeof JobPlan>
