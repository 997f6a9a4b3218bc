import { idKey } from '@bayledger/reckoning/sensor/sensor-id'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { authorizedBundles } from './answers.ts'
import { countedMinutes, doubtOf } from './drive-clock.ts'

/** How far it is proven that the light is out and will stay out. */
export type Proof =
  | { readonly verdict: 'proven'; readonly minutes: number }
  /** `minutes`: those driven so far with the light off; `needed`: those that the drive takes. */
  | {
      readonly verdict: 'not-yet-proven'
      readonly why: 'relearn-set-aside' | 'not-driven-enough' | 'drive-doubtful'
      readonly minutes: number
      readonly needed: number
    }
  | ({ readonly verdict: 'not-fixed' } & Failure)
  | { readonly verdict: 'nothing-to-prove' }

/** What shows that the repair did not hold. */
export type Failure =
  | { readonly why: 'light-on-drive' | 'light-on-at-closing' | 'lamp-dark' | 'relearn-refused' }
  | { readonly why: 'sensor-silent' | 'id-misplaced'; readonly wheel: WheelPosition }

/** Minutes of driving after which a warning would have come: 49 CFR 571.138 S4.2 allows the system 20. */
export const proofDriveMinutes = 20

/**
 * Minutes that the drive of this order takes: the 20 of the rule or, where the vehicle learns on the same drive and the
 * sheet says more, the sheet's. The plan's step shows the same figure.
 */
export const minutesToDrive = ({ plan }: OrderState): number =>
  (plan?.plan.steps ?? []).reduce(
    (most, { closedBy, figure }) =>
      closedBy === 'drive.done' && figure?.kind === 'minutes' ? Math.max(most, figure.minutes) : most,
    proofDriveMinutes,
  )

export const proofOf = (state: OrderState): Proof => {
  const failure = whatFailed(state)
  if (failure) return { verdict: 'not-fixed', ...failure }
  const drives = provingDrives(state)
  const needed = minutesToDrive(state)
  const undoubted = drives.filter(({ written }) => doubtOf(state, written.entryId) === null)
  const isDoubted = undoubted.length < drives.length && minutesOf(state, undoubted) < needed
  const minutes = minutesOf(state, isDoubted ? drives : undoubted)
  const isDone = minutes >= needed
  if (hasNothingToProve(state) && !isDone) return { verdict: 'nothing-to-prove' }
  if (isDoubted) return { verdict: 'not-yet-proven', why: 'drive-doubtful', minutes, needed }
  if (relearnIsSetAside(state))
    return { verdict: 'not-yet-proven', why: 'relearn-set-aside', minutes, needed }
  return isDone
    ? { verdict: 'proven', minutes }
    : { verdict: 'not-yet-proven', why: 'not-driven-enough', minutes, needed }
}

/** No work, or only a check of the torque: nothing was done that the light could show. */
const hasNothingToProve = (state: OrderState): boolean => {
  const works = authorizedBundles(state)
    .flatMap((bundle) => bundle.works)
    .filter(({ kind }) => kind !== 'look')
  return works.length > 0
    ? works.every(({ kind }) => kind === 'torque-again')
    : (state.plan?.plan.steps ?? []).length === 0
}

/** Whether the minutes that the drive takes have been driven with the light off. */
export const isDriven = (state: OrderState): boolean =>
  minutesOf(state, provingDrives(state)) >= minutesToDrive(state)

/** Drives with the light off, since it last came on and since a wheel last came off, went on or got a sensor. */
const provingDrives = (state: OrderState): OrderState['drives'] => {
  const worked = Object.values(state.work).flatMap(({ removed, mounted, fitted }) =>
    [removed, mounted, fitted].map((fact) => fact?.written.seq ?? 0),
  )
  const after = Math.max(0, state.drives.findLast((drive) => !isGood(drive))?.written.seq ?? 0, ...worked)
  return state.drives.filter((drive) => drive.written.seq > after)
}

const minutesOf = (state: OrderState, drives: OrderState['drives']): number =>
  drives.reduce((sum, drive) => sum + countedMinutes(state, drive), 0)

const isGood = ({ lightAtEnd, lampCheckAfter }: OrderState['drives'][number]): boolean =>
  lightAtEnd === 'off' && lampCheckAfter === 'lights-and-goes-out'

const whatFailed = (state: OrderState): Failure | null => {
  const drive = state.drives.at(-1)
  const light = state.closing.telltale
  if (drive && !isGood(drive)) return { why: 'light-on-drive' }
  if (light?.behavior && light.behavior !== 'off' && !(drive && drive.written.seq > light.written.seq))
    return { why: 'light-on-at-closing' }
  if (light?.lampCheck === 'dark') return { why: 'lamp-dark' }
  if (state.relearn?.result === 'refused') return { why: 'relearn-refused' }
  const silent = readingOrder.find((wheel) => {
    const reading = state.closing.wheels[wheel]?.sensor?.reading
    return reading?.answer === 'silent' && reading.tries >= 2
  })
  if (silent) return { why: 'sensor-silent', wheel: silent }
  const misplaced = readingOrder.find((wheel) => isMisplaced(state, wheel))
  return misplaced ? { why: 'id-misplaced', wheel: misplaced } : null
}

/** Whether the ID that the vehicle stores for a wheel, in the notation it was read in, differs from the wheel's own. */
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
