import type { Work } from '../estimate.ts'
import { type SafetyFigure, type SpecificationSheet, unverifiedFigures } from '../sheet.ts'
import { type JobPlan, type Step, stepKeys } from '../step.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import { type StepWords, stepOf } from './step-of.ts'
import {
  confirmFigure,
  placardWheels,
  pressureKey,
  proveIt,
  relearnKey,
  relearnStep,
  setPressures,
} from './vehicle-steps.ts'
import { closeTire, findLeak, fitSensor, openTire, serviceStem, tightenWheel } from './wheel-steps.ts'

/** What was authorized, each work with the bundle that it belongs to. */
export type AuthorizedWork = { readonly work: Work; readonly bundleKey: string }

/**
 * The steps for exactly the authorized works, in order, each once however many works need it. Pure: the same works
 * and sheet give the same plan, and keys never change from one plan to the next, so that what is closed stays closed.
 */
export const planJob = (
  sheet: SpecificationSheet,
  authorized: readonly AuthorizedWork[],
  planVersion: number,
): JobPlan => {
  const onWheels = inReadingOrder(authorized.flatMap(({ work }) => ('wheel' in work ? [work.wheel] : [])))
  const wheelPlans = onWheels.flatMap((wheel) => wheelSteps(sheet, wheel, authorized))
  const steps = [...wheelPlans, ...vehicleSteps(sheet, authorized, onWheels)]
  const confirmations = figuresThatRest(steps, sheet).map((figure) =>
    stepOf(sheet, steps[0]?.bundleKey ?? null, confirmFigure(sheet, figure)),
  )
  return { planVersion, steps: [...confirmations, ...steps] }
}

const wheelSteps = (
  sheet: SpecificationSheet,
  wheel: WheelPosition,
  authorized: readonly AuthorizedWork[],
): Step[] => {
  const here = authorized.filter(({ work }) => 'wheel' in work && work.wheel === wheel)
  const bundleKey = here[0]?.bundleKey ?? null
  const fit = here.map(({ work }) => work).find((work) => work.kind === 'fit-sensor')
  const stem = here.some(({ work }) => work.kind === 'service-stem')
  const leak = here.some(({ work }) => work.kind === 'find-leak')
  const sensor = fit ? fitSensor(sheet, wheel, fit.valve, fit.identity) : { before: [], inside: [] }
  const before = [...(leak ? findLeak(wheel) : []), ...sensor.before]
  const inside = [...sensor.inside, ...(stem && !fit ? serviceStem(wheel) : [])]
  const opened = openTire(wheel, keysOf(before))
  const closed = closeTire(sheet, wheel, inside.length > 0 ? keysOf(inside) : [`${wheel}.tire.inside`])
  // The spare is fitted to no hub: its tire is opened and closed, and nothing is torqued.
  const isSpare = wheel === 'SP'
  const spareWords = [...before, ...withoutWheelOff(opened, keysOf(before)), ...inside, ...closed]
  const words = isSpare
    ? spareWords
    : [...before, ...opened, ...inside, ...closed, ...tightenWheel(sheet, wheel, [`${wheel}.tire.balance`])]
  return words.map((step) => stepOf(sheet, bundleKey, step))
}

const withoutWheelOff = (opened: readonly StepWords[], after: readonly string[]): StepWords[] =>
  opened
    .filter(({ closedBy }) => closedBy !== 'wheel.removed')
    .map((step, index) => (index === 0 ? { ...step, waitsFor: after } : step))

const vehicleSteps = (
  sheet: SpecificationSheet,
  authorized: readonly AuthorizedWork[],
  onWheels: readonly WheelPosition[],
): Step[] => {
  const bundleOf = (...kinds: readonly Work['kind'][]) =>
    authorized.find(({ work }) => kinds.includes(work.kind))?.bundleKey ?? null
  const first = authorized.find(({ work }) => work.kind !== 'look')?.bundleKey
  if (first === undefined) return []
  const torqued = onWheels.filter((wheel) => wheel !== 'SP')
  const checks = torqued.map(stepKeys.torqueCheck)
  const pressures = setPressures(sheet, (wheel) =>
    onWheels.includes(wheel)
      ? [wheel === 'SP' ? 'SP.tire.balance' : stepKeys.torqueRound(wheel, 'again')]
      : [],
  )
  const pressureKeys = placardWheels(sheet).map(pressureKey)
  const relearnBundle = bundleOf('relearn', 'reset', 'fit-sensor')
  const relearn = relearnBundle ? relearnStep(sheet, pressureKeys, checks) : []
  const after = relearn.length > 0 ? [relearnKey] : pressureKeys
  return [
    ...pressures.map((step) => stepOf(sheet, bundleOf('set-pressures') ?? first, step)),
    ...relearn.map((step) => stepOf(sheet, relearnBundle, step)),
    ...proveIt(sheet, after, checks).map((step) => stepOf(sheet, first, step)),
  ]
}

const figuresThatRest = (steps: readonly Step[], sheet: SpecificationSheet): SafetyFigure[] =>
  unverifiedFigures(sheet).filter((figure) => steps.some((step) => step.unverified === figure))

const keysOf = (steps: readonly StepWords[]): string[] => steps.map(({ stepKey }) => stepKey)
