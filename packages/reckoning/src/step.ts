import * as z from 'zod/mini'
import { workCautionNumbers } from './cautions/work-cautions.ts'
import { Pressure, Torque } from './quantity.ts'
import { RotationDoubt } from './rotation/rotation-doubt.ts'
import { RotationPattern } from './rotation/rotation-pattern.ts'
import { LoadClass, SafetyFigure, SheetRelearn } from './sheet.ts'
import { torqueRounds } from './torque/torque-rounds.ts'
import { WheelPosition } from './wheels.ts'

/** A step's stable name, such as `RR.studs.torque-full` or `vehicle.relearn.done`: a later deploy never changes it. */
export const StepKey = z.string().check(z.regex(/^[A-Z][A-Za-z]*(\.[a-z-]+)+$|^vehicle(\.[a-z-]+)+$/))
export type StepKey = z.infer<typeof StepKey>

/** The source of a step's figure: as a person typed it, or one of the sources that the plan knows. */
export const StepFigureSource = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('sheet'), reference: z.string() }),
  /** About half of the sheet's figure, for the first round of tightening. */
  z.strictObject({ from: z.literal('half-of-sheet'), reference: z.string() }),
  z.strictObject({ from: z.enum(['stem-nut', 'stem-screw', 'valve-core', 'federal-rule']) }),
])
export type StepFigureSource = z.infer<typeof StepFigureSource>

const source = StepFigureSource

/** The one figure that a step shows, with whose figure it is. */
export const StepFigure = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('torque'), torque: Torque, source }),
  z.strictObject({ kind: z.literal('placard'), psi: z.number(), source }),
  z.strictObject({ kind: z.literal('pressure'), pressure: Pressure, source }),
  z.strictObject({ kind: z.literal('frequency'), megahertz: z.number(), source }),
  z.strictObject({
    kind: z.literal('minutes'),
    minutes: z.number(),
    of: z.enum(['driving', 'time-limit', 'proof-drive']),
    source,
  }),
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
  'sealant.purged',
  'tire.inspected',
  'figure.confirmed',
  'step.closed',
])
export type ClosingKind = z.infer<typeof ClosingKind>

/** How high the vehicle is during a step: on its wheels, lifted clear, or lowered until the tires just hold. */
export const StepHeight = z.enum(['floor', 'lifted', 'touching'])
export type StepHeight = z.infer<typeof StepHeight>

const common = {
  stepKey: StepKey,
  wheel: z.nullable(WheelPosition),
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
  cautions: z.array(
    z.strictObject({ number: z.enum(workCautionNumbers), version: z.int().check(z.positive()) }),
  ),
  bundleKey: z.nullable(z.string()),
  /** The place that the wheel of this step came from, where it is not its own: after a rotation. */
  comesFrom: z.optional(WheelPosition),
}

const which = z.enum(['own', 'from-another-place', 'other-set'])
const fastener = z.enum(['nut', 'bolt'])
/** Studs in the order in which they are tightened; 1 is nearest the valve. */
const order = z.array(z.int())
/** Of a wheel whose fasteners nobody has entered yet. */
const fastenerMissing = z.literal('missing')
const rubberOrMetal = z.enum(['snap-in', 'clamp-in'])
/** The label's pressure, in psi, where it is higher than rubber stems usually bear. */
const highLabelPsi = z.nullable(z.number())

/** The sheet's own procedure for learning; `null` where it has none. */
const procedure = z.nullable(SheetRelearn)

const stepOf = <Code extends z.ZodMiniType, Values extends z.core.$ZodLooseShape>(
  code: Code,
  values: Values,
) => z.strictObject({ ...common, code, values: z.strictObject(values) })

/**
 * One line of the job plan as it is written down. `code` says what the step is and `values` what its words are made
 * from; a key only names a step.
 */
export const PlannedStep = z.discriminatedUnion('code', [
  stepOf(
    z.enum([
      'confirm-placard',
      'confirm-frequency',
      'find-leak',
      'find-leak-after-look',
      'take-spare-out',
      'take-sound-spare-out',
      'stow-spare',
      'put-spare-back',
      'lower-to-touching',
      'lower-fully',
      'take-wheel-off',
      'repair-fastener',
      'purge-sealant',
      'purge-in-restraint',
      'open-tire',
      'look-inside',
      'judge-leak',
      'repair-leak',
      'read-in-rim',
      'torque-core',
      'put-core-back',
      'inflate-tire',
      'inflate-in-restraint',
      'check-leaks',
      'balance-wheel',
      'set-pressure',
      'read-sensor',
      'proof-drive',
      'see-light',
      'last-look',
    ]),
    {},
  ),
  /** `liftNotes`: what the sheet says of lifting this vehicle; may be empty. */
  stepOf(z.literal('lift-vehicle'), { liftNotes: z.string() }),
  z.strictObject({
    ...common,
    code: z.literal('confirm-stud-torque'),
    values: z.union([
      z.strictObject({ torque: Torque, thread: z.string() }),
      z.strictObject({ torque: z.literal('missing') }),
    ]),
  }),
  stepOf(z.literal('match-tire'), {
    tire: z.nullable(z.strictObject({ size: z.string(), loadClass: LoadClass })),
  }),
  stepOf(z.literal('match-sensor'), { frequencyMHz: z.nullable(z.number()), valve: rubberOrMetal }),
  stepOf(z.literal('program-sensor'), { identity: z.enum(['copy', 'new']) }),
  stepOf(z.literal('read-other-wheel'), { hearsSensors: z.boolean() }),
  stepOf(z.literal('check-tires-for-rotation'), {
    pattern: RotationPattern,
    doubts: z.array(RotationDoubt),
  }),
  stepOf(z.literal('fit-sensor'), { valve: rubberOrMetal, highLabelPsi }),
  stepOf(z.literal('renew-stem'), { valve: z.enum(['snap-in', 'clamp-in', 'plain']), highLabelPsi }),
  stepOf(z.enum(['seat-tire', 'seat-in-restraint']), { keepsStem: z.boolean() }),
  z.strictObject({
    ...common,
    code: z.literal('put-wheel-on'),
    values: z.union([
      z.strictObject({ which, fastener, handTurns: z.number(), order }),
      z.strictObject({ which, fastener: fastenerMissing }),
    ]),
  }),
  z.strictObject({
    ...common,
    code: z.enum(['torque-studs', 'torque-after-miles', 'check-torque']),
    values: z.union([z.strictObject({ fastener, order }), z.strictObject({ fastener: fastenerMissing })]),
  }),
  z.strictObject({
    ...common,
    code: z.literal('relearn'),
    values: z.strictObject({
      method: z.enum(['automatic', 'stationary', 'connector', 'reset']),
      order: z.array(WheelPosition),
    }),
    procedure,
  }),
  /** One drive in which the vehicle learns its sensors and the light is proven to stay off. */
  z.strictObject({ ...common, code: z.literal('learning-drive'), values: z.strictObject({}), procedure }),
  /** After that drive: whether the vehicle has learned. */
  stepOf(z.literal('confirm-learned'), { order: z.array(WheelPosition) }),
  stepOf(z.literal('compare-stored'), {
    moved: z.array(z.strictObject({ place: WheelPosition, from: WheelPosition })),
  }),
])
export type PlannedStep = z.infer<typeof PlannedStep>

/** What a step is. */
export type StepCode = PlannedStep['code']

/** The planned step of one code, with its own values. */
export type StepOfCode<Code extends StepCode> = PlannedStep & { readonly code: Code }

/** What every step has, whatever it is. */
export type StepCommon = Pick<PlannedStep, keyof typeof common>

/** A step that was planned while plans still held sentences; it is shown with its own words. */
export type EarlierStep = StepCommon & {
  readonly code: StepCode | 'other'
  readonly values: null
  readonly asWritten: { readonly does: string; readonly how: string }
}

/** One line of the job plan, whenever it was planned. */
export type Step = PlannedStep | EarlierStep

type Naming<S> = S extends Step ? Pick<S, 'stepKey' | 'wheel' | 'code' | 'round' | 'values'> : never

/** The name of a step for a person: enough to make its title, without anything from the sheet. */
export type StepNamed =
  | Naming<PlannedStep>
  | (Naming<EarlierStep> & { readonly asWritten: { readonly does: string } })

/**
 * What names a step, taken from the step.
 *
 * @source This program's own rule.
 */
export const namedStep = (step: Step): StepNamed => {
  const { stepKey, wheel, round } = step
  return step.values === null
    ? { stepKey, wheel, round, code: step.code, values: null, asWritten: { does: step.asWritten.does } }
    : ({ stepKey, wheel, round, code: step.code, values: step.values } as Naming<PlannedStep>)
}

/** A job plan as it is written down. */
export const JobPlan = z.strictObject({
  planVersion: z.int().check(z.positive()),
  steps: z.array(PlannedStep),
})
export type JobPlan = z.infer<typeof JobPlan>

/** A job plan as it is read: it may hold steps of earlier plans beside today's. */
export type PlanInForce = { readonly planVersion: number; readonly steps: readonly Step[] }
