import { issuedWorkCautions, type WorkCaution } from '@bayledger/reckoning/cautions/work-cautions'
import type { EarlierStep, PlanInForce, StepFigure, StepFigureSource } from '@bayledger/reckoning/step'
import * as z from 'zod/mini'
import { Id } from '../../text.ts'

/**
 * Version 1 of `plan.issued`, frozen: shops have plans like this on record, so nothing here follows later changes
 * elsewhere. In version 1 only a step's key says which step it is. This is the only file that parses a key.
 */
const wheel = z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])
const stepKey = z.string().check(z.regex(/^[A-Z][A-Za-z]*(\.[a-z-]+)+$|^vehicle(\.[a-z-]+)+$/))
const torque = z.strictObject({
  value: z.number().check(z.gte(0), z.lte(2_000)),
  unit: z.enum(['lbf·ft', 'lbf·in', 'N·m']),
})
const pressure = z.strictObject({
  value: z.number().check(z.gte(-140), z.lte(2_800)),
  unit: z.enum(['psi', 'kPa', 'bar']),
})

const figure = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('torque'), torque, source: z.string() }),
  z.strictObject({ kind: z.literal('placard'), psi: z.number(), source: z.string() }),
  z.strictObject({ kind: z.literal('pressure'), pressure, source: z.string() }),
  z.strictObject({ kind: z.literal('frequency'), megahertz: z.number(), source: z.string() }),
  z.strictObject({ kind: z.literal('count'), count: z.number(), unit: z.string(), source: z.string() }),
])

const closedBy = z.enum([
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

const step = z.strictObject({
  stepKey,
  wheel: z.nullable(wheel),
  does: z.string().check(z.minLength(1), z.maxLength(80)),
  how: z.string().check(z.maxLength(1_200)),
  closedBy,
  figure: z.nullable(figure),
  needs: z.array(z.enum(['value', 'photo', 'second-person'])),
  waitsFor: z.array(stepKey),
  unverified: z.nullable(z.enum(['placard', 'studTorque', 'frequency'])),
  caution: z.nullable(z.string()),
  bundleKey: z.nullable(z.string()),
  comesFrom: z.optional(wheel),
})
type StepVersion1 = z.infer<typeof step>
type FigureVersion1 = z.infer<typeof figure>

export const PlanVersion1 = z.strictObject({
  plan: z.strictObject({ planVersion: z.int().check(z.positive()), steps: z.array(step) }),
  decisionId: z.nullable(Id),
})

type PlanOfSteps = { readonly plan: PlanInForce; readonly decisionId: string | null }

/** Version 1 to version 2: reads the fields from the key, and keeps what was only in sentences as those sentences. */
export const planToVersion2 = ({ plan, decisionId }: z.infer<typeof PlanVersion1>): PlanOfSteps => {
  const keys = new Set(plan.steps.map((one) => one.stepKey))
  return { plan: { ...plan, steps: plan.steps.map((one) => stepToVersion2(one, keys)) }, decisionId }
}

const stepToVersion2 = (
  { does, how, caution, figure: shown, ...one }: StepVersion1,
  keys: ReadonlySet<string>,
): EarlierStep => {
  const [place = '', ...rest] = one.stepKey.split('.')
  const name = rest.join('.')
  // A round at the figure without the round before it was the look at the torque after some miles.
  const isAlone = name === 'studs.torque-again' && !keys.has(`${place}.studs.torque-full`)
  const { code, round = null, height = 'floor' } = isAlone ? afterMiles : (meanings[name] ?? unknownStep)
  return {
    ...one,
    code,
    round,
    opensTire: code === 'open-tire',
    height: one.wheel === 'SP' ? 'floor' : height,
    figure: shown && figureToVersion2(shown),
    cautions: caution === null ? [] : cautionOf(caution),
    values: null,
    asWritten: { does, how },
  }
}

/** Version 1 had a caution's number only; these are the versions in force when it ended. */
const cautionOf = (number: string): WorkCaution[] =>
  isIssued(number) ? [{ number, version: number === 'CW-03' ? 2 : 1 }] : []

const isIssued = (number: string): number is WorkCaution['number'] =>
  Object.hasOwn(issuedWorkCautions, number)

const figureToVersion2 = (shown: FigureVersion1): StepFigure => {
  const source: StepFigureSource = sources[shown.source] ?? { from: 'sheet', reference: shown.source }
  return shown.kind === 'count'
    ? { kind: 'minutes', minutes: shown.count, of: minutesOf[shown.unit] ?? 'proof-drive', source }
    : { ...shown, source }
}

/** The sources that the program itself named. */
const sources: Readonly<Record<string, StepFigureSource>> = {
  "stem nut, sensor maker's sheet": { from: 'stem-nut' },
  "stem screw, sensor maker's sheet": { from: 'stem-screw' },
  "valve core, sensor maker's sheet": { from: 'valve-core' },
  '49 CFR 571.138 S4.2': { from: 'federal-rule' },
}

const minutesOf: Readonly<Record<string, (StepFigure & { kind: 'minutes' })['of']>> = {
  'min driven': 'driving',
  'min limit': 'time-limit',
}

type Meaning = Pick<EarlierStep, 'code'> & Partial<Pick<EarlierStep, 'round' | 'height'>>

const lifted = (code: EarlierStep['code']): Meaning => ({ code, height: 'lifted' })
const afterMiles: Meaning = { code: 'torque-after-miles', round: 'again' }
const unknownStep: Meaning = { code: 'other' }

/** What a key's name meant, without the place in front of it. */
const meanings: Readonly<Record<string, Meaning>> = {
  'confirm.placard': { code: 'confirm-placard' },
  'confirm.stud-torque': { code: 'confirm-stud-torque' },
  'confirm.frequency': { code: 'confirm-frequency' },
  'leak.find': { code: 'find-leak' },
  'tire.match': { code: 'match-tire' },
  'sensor.match': { code: 'match-sensor' },
  'sensor.program': { code: 'program-sensor' },
  'other.read': { code: 'read-other-wheel' },
  'rotation.tires': { code: 'check-tires-for-rotation' },
  'wheel.out': { code: 'take-spare-out' },
  'wheel.stow': { code: 'stow-spare' },
  'wheel.off': lifted('take-wheel-off'),
  'tire.open': lifted('open-tire'),
  'tire.inside': lifted('look-inside'),
  'leak.judge': lifted('judge-leak'),
  'leak.repair': lifted('repair-leak'),
  'sensor.fit': lifted('fit-sensor'),
  'stem.renew': lifted('renew-stem'),
  'sensor.read-in-rim': lifted('read-in-rim'),
  'tire.seat': lifted('seat-tire'),
  'tire.core': lifted('torque-core'),
  'tire.leak': lifted('check-leaks'),
  'tire.balance': lifted('balance-wheel'),
  'wheel.on': lifted('put-wheel-on'),
  'studs.torque-half': { code: 'torque-studs', round: 'half', height: 'touching' },
  'studs.torque-full': { code: 'torque-studs', round: 'full', height: 'touching' },
  'studs.torque-again': { code: 'torque-studs', round: 'again', height: 'touching' },
  'studs.second-check': { code: 'check-torque', height: 'touching' },
  'pressure.set': { code: 'set-pressure' },
  'relearn.done': { code: 'relearn' },
  'closing.read': { code: 'read-sensor' },
  'closing.module': { code: 'compare-stored' },
  'proof.drive': { code: 'proof-drive' },
  'closing.light': { code: 'see-light' },
  'last.look': { code: 'last-look' },
}
