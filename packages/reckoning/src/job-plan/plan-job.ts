import type { Work } from '../estimate.ts'
import { cameFrom, movedPlaces } from '../rotation/moves.ts'
import { type SafetyFigure, type SpecificationSheet, unverifiedFigures } from '../sheet.ts'
import type { JobPlan, PlannedStep } from '../step.ts'
import {
  inReadingOrder,
  type RoadPosition,
  readingOrder,
  roadPositions,
  type WheelPosition,
} from '../wheels.ts'
import { type AuthorizedWork, inOneOrder, type PlannedWork } from './authorized-work.ts'
import { beforeFitting, type JobWheels, jobWheels, readyKey } from './job-wheels.ts'
import { learnAndProve } from './learn-and-prove.ts'
import { liftOnce } from './lift-once.ts'
import { afterLift, liftSteps } from './lift-steps.ts'
import { checkTires, putSpareBack, readOtherWheel, stowSpare } from './other-wheels.ts'
import { torqueCheckKey, torqueRoundKey } from './step-keys.ts'
import { type StepDraft, stepOf } from './step-of.ts'
import type { TireDangers } from './tire-dangers.ts'
import { confirmFigure, lastLook, lastLookKey, pressureKey, setPressures } from './vehicle-steps.ts'
import { stepsAtHub, stepsOffHub } from './wheel-plan.ts'

/**
 * The steps for exactly the authorized works, in order, each once however many works need it. Pure: the same set of
 * works, the same sheet and the same dangers give the same plan, and keys never change from one plan to the next, so
 * that what is closed stays closed.
 *
 * @limits A rotation that the sheet refuses moves no wheel; its step says why. What the tires themselves
 * refuse is found at that step (`rotationRefusals`).
 * @source Steps and their order: common practice, no source. Figures: the sheet, where the vehicle maker's governs.
 */
export const planJob = (
  sheet: SpecificationSheet,
  authorized: readonly AuthorizedWork[],
  planVersion: number,
  dangers: TireDangers,
): JobPlan => {
  const works = inOneOrder(authorized)
  const job = jobWheels(
    sheet,
    works.map(({ work }) => work),
  )
  const steps = [...wheelSteps(sheet, job, works, dangers), ...vehicleSteps(sheet, job, works)]
  const bundleKey = steps.find((step) => step.bundleKey !== null)?.bundleKey ?? null
  const confirmations = figuresThatRest(steps, sheet).map((figure) =>
    stepOf(sheet, bundleKey, confirmFigure(sheet, figure)),
  )
  return { planVersion, steps: [...confirmations, ...steps] }
}

/** The steps of every wheel that the job touches: each is off, worked on and back on in one lift with the others. */
const wheelSteps = (
  sheet: SpecificationSheet,
  job: JobWheels,
  works: readonly AuthorizedWork[],
  dangers: TireDangers,
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
    ...(job.spareTo === null ? [] : (['SP'] as const)),
    ...movedPlaces(job.moves),
  ])
  const offHub = (wheel: WheelPosition) => stepsOffHub(sheet, job, wheel, works, dangers)
  const atHub = (wheel: WheelPosition) => (wheel === 'SP' ? [] : stepsAtHub(sheet, job, wheel, works))
  // No bundle's: whatever the customer answers since, a vehicle that was lifted is lowered.
  const lift = liftSteps(sheet, job).map((step) => stepOf(sheet, null, step))
  return liftOnce([
    ...asked,
    ...lift,
    ...touched.flatMap(offHub),
    ...touched.flatMap(atHub),
    ...spareBack(job).map((step) => stepOf(sheet, bundleOfSpare(works) ?? bundleKey, step)),
  ])
}

/** The spare's place is filled again: with a wheel from another place, or with itself where only its tire was opened. */
const spareBack = (job: JobWheels): StepDraft[] => {
  if (job.spareTo !== null) return []
  const from = cameFrom(job.moves, 'SP')
  if (from !== 'SP') return [stowSpare(from, beforeFitting(job, 'SP'))]
  return job.opened.includes('SP') ? [putSpareBack([readyKey(job, 'SP')])] : []
}

const bundleOfSpare = (works: readonly AuthorizedWork[]): string | null =>
  works.find(({ work }) => 'wheel' in work && work.wheel === 'SP')?.bundleKey ?? null

const vehicleSteps = (
  sheet: SpecificationSheet,
  job: JobWheels,
  works: readonly AuthorizedWork[],
): PlannedStep[] => {
  const sold = works.filter(({ work }) => work.kind !== 'look' && work.kind !== 'fit-spare')
  const stepFor = (bundleKey: string | null) => (step: StepDraft) => stepOf(sheet, bundleKey, step)
  const [{ bundleKey: first } = { bundleKey: null }] = sold
  if (sold.length === 0) return spareAlone(sheet, job).map(stepFor(null))
  if (job.spareTo === null && sold.every(({ work }) => work.kind === 'torque-again'))
    return [lastLook(job.torquedAgain.map((wheel) => torqueRoundKey(wheel, 'again')))].map(stepFor(first))
  const checks = job.cameOff.map(torqueCheckKey)
  const pressures = pressuresOf(sheet, job)
  const settled = [...pressures.map(({ stepKey }) => stepKey), ...stowedKey(job)]
  const learns = relearnBundleOf(sheet, job, works)
  const { learning, proving } = learnAndProve({
    sheet,
    heard: heardAtTheEnd(sheet, works),
    moves: job.moves,
    learns,
    after: [...settled, lastLookKey],
    checks,
  })
  return [
    ...pressures.map(stepFor(bundleOf(works, 'set-pressures') ?? first)),
    ...[lastLook(settled)].map(stepFor(first)),
    ...learning.map(stepFor(learns)),
    ...proving.map((step) => stepFor(step.code === 'confirm-learned' ? learns : first)(step)),
  ]
}

/** Where nothing is sold, the spare that goes on gets its pressure, and somebody looks round the vehicle. */
const spareAlone = (sheet: SpecificationSheet, job: JobWheels): StepDraft[] => {
  if (job.spareTo === null) return []
  const fitted = pressureKey(spareStands(sheet, job.spareTo))
  const pressures = pressuresOf(sheet, job).filter(({ stepKey }) => stepKey === fitted)
  return [
    ...pressures,
    lastLook(pressures.length > 0 ? [fitted] : [torqueRoundKey(job.spareTo, 'again'), ...afterLift(job)]),
  ]
}

/** A temporary spare has a pressure of its own; a full-size one takes that of the place where it goes on. */
const spareStands = ({ spare }: SpecificationSheet, spareTo: RoadPosition): WheelPosition =>
  spare === 'full-size' ? spareTo : 'SP'

/** Every pressure of the label; where the spare goes on, none for the wheel that it replaces or for its empty place. */
const pressuresOf = (sheet: SpecificationSheet, job: JobWheels): (StepDraft & { stepKey: string })[] => {
  const { spareTo } = job
  const left = spareTo === null ? null : spareStands(sheet, spareTo) === 'SP' ? spareTo : 'SP'
  return setPressures(sheet, (wheel) => [...standsAfter(job, wheel), ...afterLift(job)]).filter(
    ({ wheel }) => wheel !== left,
  )
}

/** The wheels whose sensor must answer at the end; a wheel that got a plain stem has none. */
const heardAtTheEnd = (sheet: SpecificationSheet, works: readonly AuthorizedWork[]): WheelPosition[] => {
  if (sheet.system !== 'direct') return []
  const fitted = new Set(works.flatMap(({ work }) => (work.kind === 'fit-sensor' ? [work.wheel] : [])))
  const silenced = new Set(
    works.flatMap(({ work }) =>
      work.kind === 'service-stem' && work.valve === 'plain' && !fitted.has(work.wheel) ? [work.wheel] : [],
    ),
  )
  const monitored: readonly WheelPosition[] = sheet.spareMonitored ? readingOrder : roadPositions
  return monitored.filter((wheel) => !silenced.has(wheel))
}

/** The step after which the wheel at a place stays there. */
const standsAfter = (job: JobWheels, wheel: WheelPosition): string[] => {
  if (wheel === 'SP') return job.spareTo === null ? stowedKey(job) : [torqueRoundKey(job.spareTo, 'again')]
  const isTorqued = job.cameOff.includes(wheel) || job.torquedAgain.includes(wheel)
  return isTorqued ? [torqueRoundKey(wheel, 'again')] : []
}

const stowedKey = (job: JobWheels): string[] => spareBack(job).map(({ stepKey }) => stepKey)

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
  'repair-puncture',
  'rotate',
] as const satisfies readonly Work['kind'][]

const bundleOf = (
  works: readonly AuthorizedWork[],
  ...kinds: readonly PlannedWork['kind'][]
): string | null => works.find(({ work }) => kinds.includes(work.kind))?.bundleKey ?? null

const figuresThatRest = (steps: readonly PlannedStep[], sheet: SpecificationSheet): SafetyFigure[] =>
  unverifiedFigures(sheet).filter((figure) => steps.some((step) => step.unverified === figure))
