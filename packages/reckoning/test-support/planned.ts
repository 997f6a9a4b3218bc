import type { Work } from '../src/estimate.ts'
import { planJob } from '../src/job-plan/plan-job.ts'
import { noDangers, type TireDangers } from '../src/job-plan/tire-dangers.ts'
import type { SpecificationSheet } from '../src/sheet.ts'
import { JobPlan, type Step } from '../src/step.ts'
import { utilitySheet as sheet, withFullSizeSpare } from './utility-sheet.ts'

/** A vehicle without sensors, which is told that its tires are right. */
export const indirect: SpecificationSheet = {
  ...sheet,
  system: 'indirect',
  sensor: null,
  relearn: {
    method: 'reset',
    entry: 'Hold the button.',
    confirmation: 'The light flashes three times.',
    exit: 'Key off.',
    timeLimitMinutes: null,
    parkMinutes: null,
    driveMinutes: 30,
    driveSpeedMph: null,
    knownTrap: null,
  },
  sources: { ...sheet.sources, frequency: null },
}
/** A vehicle whose spare is a wheel like the others. */
export const fiveAlike: SpecificationSheet = withFullSizeSpare(sheet)

/** The plan of some works, each in a bundle of its own. */
export const steps = (
  works: readonly Work[],
  on: SpecificationSheet = sheet,
  dangers: TireDangers = noDangers,
): readonly Step[] =>
  JobPlan.parse(
    planJob(
      on,
      works.map((work) => ({ work, bundleKey: work.kind })),
      1,
      dangers,
    ),
  ).steps
export const keys = (works: readonly Work[], on?: SpecificationSheet) =>
  steps(works, on).map(({ stepKey }) => stepKey)
export const keysAt = (place: string, works: readonly Work[], on?: SpecificationSheet) =>
  keys(works, on).flatMap((key) => (key.startsWith(`${place}.`) ? [key.slice(3)] : []))
export const find = (
  key: string,
  works: readonly Work[],
  on?: SpecificationSheet,
  dangers?: TireDangers,
): Step => {
  const step = steps(works, on, dangers).find(({ stepKey }) => stepKey === key)
  if (!step) throw new Error(`no step ${key}`)
  return step
}

export const hub = [
  'wheel.on',
  'studs.torque-half',
  'studs.torque-full',
  'studs.torque-again',
  'studs.second-check',
]
export const atTheEnd = ['pressure.set', 'closing.read']
export const closed = ['tire.seat', 'tire.core', 'tire.inflate', 'tire.leak', 'tire.balance']
export const lift = ['vehicle.lift.up', 'vehicle.lift.touching', 'vehicle.lift.down']
/** The test's vehicle learns by driving: on the proof drive. */
export const onTheRoad = [
  'vehicle.proof.drive',
  'vehicle.relearn.done',
  'vehicle.closing.module',
  'vehicle.closing.light',
]
export const standing: SpecificationSheet = {
  ...sheet,
  relearn: sheet.relearn && { ...sheet.relearn, method: 'stationary', timeLimitMinutes: 5 },
}
