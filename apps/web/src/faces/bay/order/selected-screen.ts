import type { OrderState } from '@bayledger/ledger/state'
import type { SheetFigure } from '@bayledger/reckoning/sheet'
import type { Step } from '@bayledger/reckoning/step'
import { readingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { chooseStep } from '../work/choose-step.ts'
import type { Stage } from './stage.ts'

/** The screen that someone selected; `null`: the next step or task. */
export type SelectedScreen =
  | { readonly at: 'task'; readonly task: ArrivalTask; readonly question?: string }
  | { readonly at: 'wheel'; readonly wheel: WheelPosition }
  | { readonly at: 'step' | 'aside'; readonly stepKey: string }
  | { readonly at: 'not-right'; readonly stepKey: string | null; readonly wheel: WheelPosition | null }
  | { readonly at: 'figures'; readonly figure: SheetFigure | null }
  | { readonly at: 'plan' | 'history' | 'findings' | 'photos' | 'comeback' }

/** The screen on which a form is filled in, by the form's key; `null` where none shows it any more. */
export const screenOfForm = (state: OrderState, formKey: string): SelectedScreen | null => {
  const rest = formKey.startsWith(`${state.orderId}/`) ? formKey.slice(state.orderId.length + 1) : formKey
  const step = state.plan?.plan.steps.find(
    ({ stepKey }) => rest === stepKey || rest.startsWith(`${stepKey}/`),
  )
  if (step) return state.closed[step.stepKey] ? null : { at: 'step', stepKey: step.stepKey }
  const [what = '', at] = rest.split('/')
  if (what === 'withdraw') return { at: 'history' }
  const named = state.plan?.plan.steps.find(({ stepKey }) => stepKey === at) ?? null
  if (what === 'aside')
    return named && !state.closed[named.stepKey] ? { at: 'aside', stepKey: named.stepKey } : null
  const wheel = named?.wheel ?? readingOrder.find((position) => position === at) ?? null
  if (what === 'not-right') return { at: 'not-right', stepKey: named?.stepKey ?? null, wheel }
  const of = taskOfForm[what]
  if (of === 'gauge' || of === 'sensor' || of === 'tire')
    return wheel === null ? null : { at: 'task', task: { what: of, wheel } }
  return of === undefined ? null : { at: 'task', task: { what: of } }
}

type TaskKind = Exclude<ArrivalTask['what'], 'event'>

/** What the first part of a form's key says of its task. */
const taskOfForm: Readonly<Record<string, TaskKind>> = {
  gauge: 'gauge',
  sensor: 'sensor',
  tire: 'tire',
  surroundings: 'surroundings',
  light: 'warning-light',
  module: 'control-module',
  'door-label': 'door-label',
  'sensor-kind': 'sensor-kind',
}

/** The task of the arrival check to show. */
export const taskShown = (
  stage: Stage,
  selected: SelectedScreen | null,
  left: readonly ArrivalTask[],
): ArrivalTask | null => {
  if (selected?.at === 'task') return selected.task
  return selected === null && stage === 'arrival' ? (left[0] ?? null) : null
}

/** The step of the plan to show this person. */
export const stepShown = (
  state: OrderState,
  stage: Stage,
  selected: SelectedScreen | null,
  staffId: string,
): Step | null => {
  if (stage !== 'work') return null
  const named =
    selected?.at === 'step' || selected?.at === 'aside'
      ? state.plan?.plan.steps.find(({ stepKey }) => stepKey === selected.stepKey && !state.closed[stepKey])
      : undefined
  return named ?? chooseStep(state, staffId, selected?.at === 'wheel' ? selected.wheel : null)
}
