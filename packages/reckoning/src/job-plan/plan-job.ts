import type { Work } from '../estimate.ts'
import { cameFrom, movedPlaces } from '../rotation/moves.ts'
import { type SafetyFigure, type SpecificationSheet, unverifiedFigures } from '../sheet.ts'
import type { JobPlan, PlannedStep } from '../step.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import { type AuthorizedWork, inOneOrder } from './authorized-work.ts'
import { beforeFitting, type JobWheels, jobWheels, readyKey } from './job-wheels.ts'
import { liftOnce } from './lift-once.ts'
import { checkTires, readOtherWheel, stowSpare } from './other-wheels.ts'
import { torqueCheckKey, torqueRoundKey } from './step-keys.ts'
import { type StepDraft, stepOf } from './step-of.ts'
import {
  confirmFigure,
  lastLook,
  placardWheels,
  pressureKey,
  proveIt,
  relearnKey,
  relearnStep,
  setPressures,
} from './vehicle-steps.ts'
import { stepsAtHub, stepsOffHub } from './wheel-plan.ts'

/**
 * The steps for exactly the authorized works, in order, each once however many works need it. Pure: the same set of
 * works and the same sheet give the same plan, and keys never change from one plan to the next, so that what is
 * closed stays closed.
 *
 * @limits A rotation that the sheet refuses moves no wheel; its step says why. Where the tires refuse, see
 * `planRotation`.
 * @source Steps and their order: common practice, no source. Figures: the sheet, where the vehicle maker's governs.
 */
export const planJob = (
  sheet: SpecificationSheet,
  authorized: readonly AuthorizedWork[],
  planVersion: number,
): JobPlan => {
  const works = inOneOrder(authorized)
  const job = jobWheels(
    sheet,
    works.map(({ work }) => work),
  )
  const steps = [...wheelSteps(sheet, job, works), ...vehicleSteps(sheet, job, works)]
  const confirmations = figuresThatRest(steps, sheet).map((figure) =>
    stepOf(sheet, steps[0]?.bundleKey ?? null, confirmFigure(sheet, figure)),
  )
  return { planVersion, steps: [...confirmations, ...steps] }
}

/** The steps of every wheel that the job touches: each is off, worked on and back on in one lift with the others. */
const wheelSteps = (
  sheet: SpecificationSheet,
  job: JobWheels,
  works: readonly AuthorizedWork[],
): PlannedStep[] => {
  const bundleKey = bundleOf(works, 'rotate')
  const asked = [
    ...(job.rotation
      ? [stepOf(sheet, bundleKey, checkTires(job.rotation.pattern, job.rotation.doubts))]
      : []),
    ...(job.swapsSet ? job.cameOff : []).map((wheel) =>
      stepOf(sheet, bundleOf(works, 'swap-wheels'), readOtherWheel(sheet, wheel)),
    ),
  ]
  const touched = inReadingOrder([
    ...job.opened,
    ...job.cameOff,
    ...job.torquedAgain,
    ...movedPlaces(job.moves),
  ])
  const offHub = (wheel: WheelPosition) => stepsOffHub(sheet, job, wheel, works)
  const atHub = (wheel: WheelPosition) => (wheel === 'SP' ? [] : stepsAtHub(sheet, job, wheel, works))
  const spare = cameFrom(job.moves, 'SP')
  const stowed = spare === 'SP' ? [] : [stepOf(sheet, bundleKey, stowSpare(spare, beforeFitting(job, 'SP')))]
  return liftOnce([...asked, ...touched.flatMap(offHub), ...touched.flatMap(atHub), ...stowed])
}

const vehicleSteps = (
  sheet: SpecificationSheet,
  job: JobWheels,
  works: readonly AuthorizedWork[],
): PlannedStep[] => {
  const first = works.find(({ work }) => work.kind !== 'look')?.bundleKey
  if (first === undefined) return []
  const stepFor = (bundleKey: string | null) => (step: StepDraft) => stepOf(sheet, bundleKey, step)
  if (works.every(({ work }) => work.kind === 'look' || work.kind === 'torque-again'))
    return [lastLook(job.torquedAgain.map((wheel) => torqueRoundKey(wheel, 'again')))].map(stepFor(first))
  const checks = job.cameOff.map(torqueCheckKey)
  const pressures = setPressures(sheet, (wheel) => standsAfter(job, wheel))
  const settled = [...placardWheels(sheet).map(pressureKey), ...stowedKey(job)]
  const relearnBundle = relearnBundleOf(sheet, job, works)
  const relearn = relearnBundle === null ? [] : relearnStep(sheet, settled, checks)
  const after = relearn.length > 0 ? [relearnKey] : settled
  return [
    ...pressures.map(stepFor(bundleOf(works, 'set-pressures') ?? first)),
    ...relearn.map(stepFor(relearnBundle)),
    ...proveIt(sheet, after, checks, job.moves).map(stepFor(first)),
  ]
}

/** The step after which the wheel at a place stays there. */
const standsAfter = (job: JobWheels, wheel: WheelPosition): string[] => {
  if (wheel === 'SP') {
    const stowed = stowedKey(job)
    return stowed.length > 0 || !job.opened.includes('SP') ? stowed : [readyKey(job, 'SP')]
  }
  const isTorqued = job.cameOff.includes(wheel) || job.torquedAgain.includes(wheel)
  return isTorqued ? [torqueRoundKey(wheel, 'again')] : []
}

const stowedKey = ({ moves }: JobWheels): string[] =>
  movedPlaces(moves).includes('SP') ? ['SP.wheel.stow'] : []

/**
 * The bundle whose work the vehicle must learn of: new IDs, wheels at other places, or, where there are no sensors,
 * any change of a tire or a pressure. `null` where there is nothing to learn.
 */
const relearnBundleOf = (
  sheet: SpecificationSheet,
  job: JobWheels,
  works: readonly AuthorizedWork[],
): string | null => {
  const asked = bundleOf(works, 'relearn', 'reset', 'fit-sensor')
  if (asked !== null || sheet.system === 'none') return asked
  const moved = job.swapsSet || movedPlaces(job.moves).length > 0
  if (moved) return bundleOf(works, 'swap-wheels', 'rotate')
  return sheet.system === 'indirect' ? bundleOf(works, ...changingTires) : null
}

const changingTires = [
  'set-pressures',
  'fit-tire',
  'service-stem',
  'find-leak',
  'rotate',
] as const satisfies readonly Work['kind'][]

const bundleOf = (works: readonly AuthorizedWork[], ...kinds: readonly Work['kind'][]): string | null =>
  works.find(({ work }) => kinds.includes(work.kind))?.bundleKey ?? null

const figuresThatRest = (steps: readonly PlannedStep[], sheet: SpecificationSheet): SafetyFigure[] =>
  unverifiedFigures(sheet).filter((figure) => steps.some((step) => step.unverified === figure))
