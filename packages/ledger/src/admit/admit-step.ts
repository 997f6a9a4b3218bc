import { namedStep, type Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Draft } from '../entry.ts'
import { maySetAside } from '../questions/passed-steps.ts'
import { alreadyClosed, whyNot } from '../questions/why-not.ts'
import type { OrderState } from '../state.ts'
import { type Refusal, refuse } from './refusal.ts'

/**
 * The rules for every entry that names a step: the step is planned, of this kind, authorized, in order and still open. A
 * photo closes no step and is taken at any time.
 */
export const admitToStep = (state: OrderState, draft: Draft): Refusal | null => {
  const stepKey = 'stepKey' in draft.payload ? draft.payload.stepKey : null
  if (stepKey === null || stepKey === undefined || draft.kind === 'photo.attached') return null
  const step = state.plan?.plan.steps.find((candidate) => candidate.stepKey === stepKey)
  if (!step) return refuse('STEP_NOT_PLANNED', { stepKey })
  if (draft.kind === 'trouble.found') return onOtherWheel(step, draft.payload.wheel)
  if (draft.kind === 'drive.left')
    return step.closedBy === 'drive.done'
      ? whyNot(state, step)
      : refuse('STEP_OF_OTHER_KIND', { why: 'other-kind', step: namedStep(step) })
  return draft.kind === 'step.set_aside' ? setsAside(state, step) : mayClose(state, step, draft)
}

const setsAside = (state: OrderState, step: Step): Refusal | null =>
  alreadyClosed(state, step) ??
  (maySetAside(step) ? null : refuse('STEP_NOT_SET_ASIDE', { step: namedStep(step) }))

const mayClose = (state: OrderState, step: Step, draft: Draft): Refusal | null => {
  if (draft.kind !== step.closedBy)
    return refuse('STEP_OF_OTHER_KIND', { why: 'other-kind', step: namedStep(step) })
  const otherWheel = 'wheel' in draft.payload ? onOtherWheel(step, draft.payload.wheel) : null
  if (otherWheel) return otherWheel
  if (draft.kind === 'wheel.mounted' && step.comesFrom && draft.payload.cameFrom !== step.comesFrom)
    return refuse('STEP_ON_OTHER_WHEEL', {
      why: 'other-mark',
      wheel: step.comesFrom,
      found: draft.payload.cameFrom,
    })
  return recordsAnotherMoment(step, draft) ?? lacksItsValue(step, draft) ?? whyNot(state, step)
}

const onOtherWheel = (step: Step, found: WheelPosition | null): Refusal | null =>
  step.wheel && found !== step.wheel
    ? refuse('STEP_ON_OTHER_WHEEL', { why: 'other-wheel', wheel: step.wheel, found })
    : null

/** An observation from arrival does not close a closing step, and a look from outside does not close a look inside. */
const recordsAnotherMoment = (step: Step, draft: Draft): Refusal | null => {
  const isOther =
    ('phase' in draft.payload && draft.payload.phase !== 'closing') ||
    (draft.kind === 'tire.inspected' && draft.payload.when !== 'inside')
  return isOther ? refuse('STEP_OF_OTHER_KIND', { why: 'other-moment', step: namedStep(step) }) : null
}

const lacksItsValue = (step: Step, draft: Draft): Refusal | null =>
  step.needs.includes('value') && isEmpty(draft)
    ? refuse('STEP_VALUE_MISSING', { step: namedStep(step) })
    : null

const isEmpty = (draft: Draft): boolean => {
  switch (draft.kind) {
    case 'step.closed':
      return draft.payload.value === null
    case 'wheel.checked':
      return (
        (draft.payload.sensor === null || draft.payload.sensor.answer === 'not-tried') &&
        draft.payload.notPossible.length === 0
      )
    case 'telltale.observed':
      return draft.payload.behavior === null || draft.payload.lampCheck === null
    case 'tire.inspected':
      return draft.payload.inside === null
    default:
      return false
  }
}
