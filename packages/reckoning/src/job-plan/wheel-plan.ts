import { cameFrom } from '../rotation/moves.ts'
import type { SpecificationSheet } from '../sheet.ts'
import type { PlannedStep } from '../step.ts'
import type { RoadPosition, WheelPosition } from '../wheels.ts'
import type { AuthorizedWork } from './authorized-work.ts'
import { fitSensor, readInRim, serviceStem, type Valve } from './fit-sensor.ts'
import { beforeFitting, type JobWheels } from './job-wheels.ts'
import { closeTire, openTire, takeWheelOff } from './open-tire.ts'
import { matchTire, otherReadKey, rotationTiresKey, takeSoundSpareOut, takeSpareOut } from './other-wheels.ts'
import { repairFastener } from './repair-fastener.ts'
import { findLeak, judgeLeak, repairPuncture } from './repair-leak.ts'
import { insideKey } from './step-keys.ts'
import { type StepDraft, stepOf } from './step-of.ts'
import { tightenWheel, torqueAgain, type WheelToFit } from './tighten-wheel.ts'
import { careOf, type TireCare, type TireDangers } from './tire-dangers.ts'

/**
 * A wheel's steps up to where it is ready to go on: off, its tire opened, worked on and closed, as far as authorized.
 *
 * @source Common practice, no source.
 */
export const stepsOffHub = (
  sheet: SpecificationSheet,
  job: JobWheels,
  wheel: WheelPosition,
  authorized: readonly AuthorizedWork[],
  dangers: TireDangers,
): PlannedStep[] => {
  const here = authorized.filter(({ work }) => 'wheel' in work && work.wheel === wheel)
  const bundleKey = (here[0] ?? bundleOfAll(authorized))?.bundleKey ?? null
  const care = careOf(sheet, dangers, wheel)
  const tire = job.opened.includes(wheel) ? tireWork(sheet, wheel, here, care) : null
  const before = tire?.before ?? []
  // For the spare, the wheel comes off at once: what was planned for its own tire is not done.
  const off = leavesPlace(job, wheel, wheel === job.spareTo ? [] : keysOf(before))
  const opensAfter = off.length > 0 ? keysOf(off) : keysOf(before)
  const drafts = [...before, ...off, ...(tire ? [...openTire(wheel, care, opensAfter), ...tire.after] : [])]
  return [
    ...drafts.map((step) =>
      stepOf(sheet, step.code === 'take-wheel-off' && wheel === job.spareTo ? null : bundleKey, step),
    ),
    ...here.flatMap(({ work, bundleKey: own }) =>
      work.kind === 'repair-fastener' ? [stepOf(sheet, own, repairFastener(work.wheel))] : [],
    ),
  ]
}

/**
 * A wheel's steps at its hub: on, tightened, checked; or its torque looked at again.
 *
 * @source Common practice, no source.
 */
export const stepsAtHub = (
  sheet: SpecificationSheet,
  job: JobWheels,
  wheel: RoadPosition,
  authorized: readonly AuthorizedWork[],
): PlannedStep[] => {
  const here = authorized.filter(({ work }) => 'wheel' in work && work.wheel === wheel)
  const bundleKey = (here[0] ?? bundleOfAll(authorized))?.bundleKey ?? null
  const drafts = job.cameOff.includes(wheel)
    ? tightenWheel(sheet, wheel, beforeFitting(job, wheel), wheelToFit(job, wheel))
    : job.torquedAgain.includes(wheel)
      ? [torqueAgain(sheet, wheel)]
      : []
  return drafts.map((step) => stepOf(sheet, wheel === job.spareTo ? null : bundleKey, step))
}

const wheelToFit = ({ spareTo, swapsSet, moves }: JobWheels, wheel: RoadPosition): WheelToFit => {
  if (spareTo === wheel) return { kind: 'spare' }
  if (swapsSet) return { kind: 'other-set' }
  const place = cameFrom(moves, wheel)
  return place === wheel ? { kind: 'own' } : { kind: 'from', place }
}

/** The bundle of work that concerns every wheel. */
const bundleOfAll = (authorized: readonly AuthorizedWork[]): AuthorizedWork | undefined =>
  authorized.find(({ work }) => work.kind === 'rotate' || work.kind === 'swap-wheels')

/** The spare is not on a hub: it is taken out to be moved or opened. */
const leavesPlace = (job: JobWheels, wheel: WheelPosition, before: readonly string[]): StepDraft[] => {
  const isMoved = cameFrom(job.moves, wheel) !== wheel
  const after = [
    ...before,
    ...(isMoved ? [rotationTiresKey] : []),
    ...(job.swapsSet ? job.cameOff.map(otherReadKey) : []),
  ]
  if (wheel === 'SP' && job.spareTo !== null) return [takeSoundSpareOut(after)]
  if (wheel === 'SP') return isMoved || job.opened.includes('SP') ? [takeSpareOut(after)] : []
  return job.cameOff.includes(wheel) ? [takeWheelOff(wheel, after)] : []
}

/** The steps for a tire before its wheel is touched, and those after the look inside. */
const tireWork = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  here: readonly AuthorizedWork[],
  care: TireCare,
): { readonly before: StepDraft[]; readonly after: StepDraft[] } => {
  const works = here.map(({ work }) => work)
  const fit = works.find((work) => work.kind === 'fit-sensor')
  const stem = works.find((work) => work.kind === 'service-stem')
  const hasLeak = works.some(({ kind }) => kind === 'find-leak')
  const sensor = fit ? fitSensor(sheet, wheel, fit.valve, fit.identity) : { before: [], inside: [] }
  const parts = [...sensor.inside, ...(stem && !fit ? [serviceStem(sheet, wheel, stem.valve)] : [])]
  const find = hasLeak ? [findLeak(wheel, care)] : []
  const judge = hasLeak ? [judgeLeak(wheel)] : []
  const repair = works.some(({ kind }) => kind === 'repair-puncture')
    ? [repairPuncture(wheel, judge.length > 0 ? keysOf(judge) : [insideKey(wheel)])]
    : []
  const worked = [...(care.runLow ? find : []), ...judge, ...repair, ...parts]
  const afterWork = worked.length > 0 ? keysOf(worked) : [insideKey(wheel)]
  const read = hasSensor(sheet, wheel, fit?.valve ?? stem?.valve ?? null) ? [readInRim(wheel, afterWork)] : []
  const closed = closeTire(sheet, wheel, care, read.length > 0 ? keysOf(read) : afterWork, parts.length === 0)
  return {
    before: [
      ...(care.runLow ? [] : find),
      ...(works.some(({ kind }) => kind === 'fit-tire') ? [matchTire(sheet, wheel)] : []),
      ...sensor.before,
    ],
    after: [...worked, ...read, ...closed],
  }
}

/** Whether a wheel has a sensor: known from the valve that is worked on, else from whether the vehicle listens there. */
const hasSensor = (sheet: SpecificationSheet, wheel: WheelPosition, valve: Valve | null): boolean =>
  sheet.system === 'direct' && (valve === null ? wheel !== 'SP' || sheet.spareMonitored : valve !== 'plain')

const keysOf = (steps: readonly StepDraft[]): string[] => steps.map(({ stepKey }) => stepKey)
