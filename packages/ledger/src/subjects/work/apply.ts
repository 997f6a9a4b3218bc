import { changeWheel } from '../../fold/change-wheel.ts'
import { closeStep } from '../../fold/close-step.ts'
import { type Appliers, recorded } from '../../fold/foldable.ts'
import { reopen, reopenLowering, reopenOvertaken, reopenTireCheck } from '../../fold/reopen.ts'
import { withWheelsSecured } from '../../fold/secure-wheels.ts'
import { isDriven } from '../../questions/proof.ts'
import type { PayloadOf } from '../../registry.ts'
import type { OrderState } from '../../state.ts'
import { correctedPressure } from '../arrival/corrected-pressure.ts'
import { freshFitting, torqueSteps } from '../torque/apply.ts'
import type { workKinds } from './kinds.ts'

export const applyWork: Appliers<keyof typeof workKinds> = {
  'plan.issued': (state, entry) =>
    reopenOvertaken(
      reopenTireCheck(state, {
        ...state,
        plan: recorded({ plan: withWheelsSecured(state, entry.payload.plan) }, entry),
      }),
    ),
  'figure.confirmed': (state, entry) => {
    const { figure, reference, stepKey } = entry.payload
    const confirmed = { ...state, figures: { ...state.figures, [figure]: recorded({ reference }, entry) } }
    return closeStep(confirmed, stepKey, entry)
  },
  'part.promised': (state, entry) => ({ ...state, promised: recorded(entry.payload, entry) }),
  'part.drawn': (state, entry) => {
    const { wheel, stepKey } = entry.payload
    const drawn = wheel
      ? changeWheel(state, wheel, (work) => ({ ...work, part: recorded(entry.payload, entry) }))
      : state
    return closeStep({ ...drawn, promised: null }, stepKey, entry)
  },
  'wheel.removed': (state, entry) => {
    const { wheel, remark, stepKey } = entry.payload
    const off = changeWheel(state, wheel, (work) => ({
      ...work,
      ...freshFitting(work),
      removed: recorded({ remark }, entry),
      mounted: null,
    }))
    const opened = reopen(off, wheel, (step) => step.closedBy === 'wheel.mounted' || torqueSteps(step))
    return closeStep(reopenLowering(opened), stepKey, entry)
  },
  'wheel.mounted': (state, entry) => {
    const { wheel, cameFrom, stepKey } = entry.payload
    const mounted = changeWheel(state, wheel, (work) => ({
      ...work,
      ...freshFitting(work),
      mounted: recorded({ cameFrom }, entry),
    }))
    return closeStep(reopen(mounted, wheel, torqueSteps), stepKey, entry)
  },
  'sensor.programmed': (state, entry) =>
    // Of a part that was withdrawn since, the ID is worth nothing: the part that is drawn now is blank.
    isPartMissing(state, entry.payload.stepKey)
      ? state
      : closeStep(
          changeWheel(state, entry.payload.wheel, (work) => ({
            ...work,
            programmed: recorded(entry.payload, entry),
          })),
          entry.payload.stepKey,
          entry,
        ),
  'sensor.fitted': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        fitted: recorded(entry.payload, entry),
      })),
      entry.payload.stepKey,
      entry,
    ),
  'sealant.purged': (state, entry) => closeStep(state, entry.payload.stepKey, entry),
  'sensor.broken': (state, entry) =>
    changeWheel(state, entry.payload.wheel, (work) => ({ ...work, broken: recorded(entry.payload, entry) })),
  // A leak that was found is recorded, and its step stays open.
  'leak.checked': (state, entry) => {
    const { wheel, stepKey, tight } = entry.payload
    const checked = changeWheel(state, wheel, (work) => ({ ...work, leak: recorded(entry.payload, entry) }))
    return closeStep(checked, tight ? stepKey : null, entry)
  },
  'pressure.set': (state, entry) =>
    closeStep(
      changeWheel(state, entry.payload.wheel, (work) => ({
        ...work,
        pressure: recorded(corrected(entry.payload), entry),
      })),
      entry.payload.stepKey,
      entry,
    ),
  'relearn.done': (state, entry) =>
    closeStep(
      { ...state, relearn: recorded(entry.payload, entry) },
      entry.payload.result === 'refused' ? null : entry.payload.stepKey,
      entry,
    ),
  'drive.left': (state, entry) => ({ ...state, onTheRoad: recorded(entry.payload, entry) }),
  // Drives add up: the step stays open until the minutes that a warning may take have been driven with the light off.
  'drive.done': (state, entry) => {
    const left = state.onTheRoad?.stepKey === entry.payload.stepKey ? state.onTheRoad.written : null
    const drive = recorded({ ...entry.payload, left }, entry)
    const driven = { ...state, drives: [...state.drives, drive], onTheRoad: null }
    return closeStep(driven, isDriven(driven) ? entry.payload.stepKey : null, entry)
  },
  'step.closed': (state, entry) => closeStep(state, entry.payload.stepKey, entry),
  'step.set_aside': (state, entry) => ({
    ...state,
    setAside: {
      ...state.setAside,
      [entry.payload.stepKey]: recorded({ reason: entry.payload.reason }, entry),
    },
  }),
}

/** Whether the step waits for a part that is not drawn. */
const isPartMissing = ({ plan, closed, setAside }: OrderState, stepKey: string): boolean => {
  const steps = plan?.plan.steps ?? []
  const waitsFor = steps.find((step) => step.stepKey === stepKey)?.waitsFor ?? []
  return steps.some(
    (step) =>
      step.closedBy === 'part.drawn' &&
      waitsFor.includes(step.stepKey) &&
      !closed[step.stepKey] &&
      !setAside[step.stepKey],
  )
}

/** What a tire was left at counts as the master gauge would show it; what was read stays beside it. */
const corrected = (set: PayloadOf<'pressure.set'>) => {
  const asLeft = correctedPressure(set.asLeft, set.instrument)
  return asLeft === set.asLeft ? set : { ...set, asLeft, asRead: set.asLeft }
}
