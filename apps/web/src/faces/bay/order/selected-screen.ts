import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { ArrivalTask } from '../../../features/arrival/arrival-tasks.ts'
import { chooseStep } from '../work/choose-step.ts'
import type { Stage } from './stage.ts'

/** The screen that someone selected; `null`: the next step or task. */
export type SelectedScreen =
  | { readonly at: 'task'; readonly task: ArrivalTask; readonly question?: string }
  | { readonly at: 'wheel'; readonly wheel: WheelPosition }
  | { readonly at: 'step' | 'aside'; readonly stepKey: string }
  | { readonly at: 'not-right'; readonly stepKey: string | null; readonly wheel: WheelPosition | null }
  | { readonly at: 'plan' | 'history' | 'findings' }

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
