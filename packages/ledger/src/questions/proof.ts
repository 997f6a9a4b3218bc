import { idKey } from '@bayledger/reckoning/sensor/sensor-id'
import { readingOrder, wheelNames } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'

/** How far it is proven that the light is out and will stay out. */
export type Proof =
  | { readonly verdict: 'proven'; readonly minutes: number }
  | { readonly verdict: 'not-yet-proven'; readonly why: string }
  | { readonly verdict: 'not-fixed'; readonly why: string }
  | { readonly verdict: 'nothing-to-prove' }

/** Minutes of driving after which a warning would have come: 49 CFR 571.138 S4.2 allows the system 20. */
export const proofDriveMinutes = 20

export const proofOf = (state: OrderState): Proof => {
  const failure = whatFailed(state)
  if (failure) return { verdict: 'not-fixed', why: failure }
  const minutes = provingMinutes(state)
  const isDone = minutes >= proofDriveMinutes
  if (hasNothingToProve(state) && !isDone) return { verdict: 'nothing-to-prove' }
  if (relearnIsSetAside(state))
    return { verdict: 'not-yet-proven', why: 'the vehicle was not made to learn its sensors or tires here' }
  if (isDone) return { verdict: 'proven', minutes }
  return {
    verdict: 'not-yet-proven',
    why:
      minutes > 0
        ? `driven ${minutes} of the ${proofDriveMinutes} minutes that a warning may take`
        : `not driven yet; a warning may take ${proofDriveMinutes} minutes to come`,
  }
}

/** No work, or a look at the torque alone: nothing was done that a light could tell of. */
const hasNothingToProve = (state: OrderState): boolean => {
  const works = authorizedBundles(state).flatMap((bundle) => bundle.works)
  return works.length > 0
    ? works.every(({ kind }) => kind === 'torque-again')
    : (state.plan?.plan.steps ?? []).length === 0 && authorizedBundles(state).length === 0
}

/** Whether the minutes that a warning may take have been driven with the light off. */
export const isDriven = (state: OrderState): boolean => provingMinutes(state) >= proofDriveMinutes

/** Minutes driven with the light off, since it last came on and since a wheel last came off, went on or got a sensor. */
const provingMinutes = (state: OrderState): number => {
  const worked = Object.values(state.work).flatMap(({ removed, mounted, fitted }) =>
    [removed, mounted, fitted].map((fact) => fact?.written.seq ?? 0),
  )
  const after = Math.max(0, state.drives.findLast((drive) => !isGood(drive))?.written.seq ?? 0, ...worked)
  return state.drives
    .filter((drive) => drive.written.seq > after)
    .reduce((sum, { minutes }) => sum + minutes, 0)
}

const isGood = ({ lightAtEnd, lampCheckAfter }: OrderState['drives'][number]): boolean =>
  lightAtEnd === 'off' && lampCheckAfter === 'lights-and-goes-out'

const whatFailed = (state: OrderState): string | null => {
  const drive = state.drives.at(-1)
  const light = state.closing.telltale
  if (drive && !isGood(drive)) return 'the warning light did not stay off on the proof drive'
  if (light?.behavior && light.behavior !== 'off' && !(drive && drive.written.seq > light.written.seq))
    return 'the warning light is still on at the closing check'
  if (light?.lampCheck === 'dark') return 'the warning light does not come on at the lamp check'
  if (state.relearn?.result === 'refused') return 'the vehicle did not accept its sensors'
  const silent = readingOrder.find((wheel) => {
    const reading = state.closing.wheels[wheel]?.sensor?.reading
    return reading?.answer === 'silent' && reading.tries >= 2
  })
  if (silent) return `the ${wheelNames[silent]} sensor does not answer at the closing check`
  const misplaced = readingOrder.find((wheel) => isMisplaced(state, wheel))
  return misplaced
    ? `the vehicle has stored another ID at the ${wheelNames[misplaced]} than that wheel's sensor sends`
    : null
}

/** Whether the vehicle's stored ID at a wheel, in the notation it was read in, is another than the wheel's own. */
const isMisplaced = (state: OrderState, wheel: (typeof readingOrder)[number]): boolean => {
  const { module, wheels } = state.closing
  const stored = module?.state === 'read' ? module.ids[wheel] : undefined
  const reading = wheels[wheel]?.sensor?.reading
  const own = reading?.answer === 'answered' ? reading.id : null
  if (stored === undefined || own === null || !module?.notation) return false
  return idKey(stored, module.notation) !== idKey(own, 'hex')
}

const relearnIsSetAside = (state: OrderState): boolean =>
  (state.plan?.plan.steps ?? []).some(
    (step) => step.closedBy === 'relearn.done' && state.setAside[step.stepKey] && !state.closed[step.stepKey],
  )
