import type { OrderState } from '@bayledger/ledger/state'
import type { Step } from '@bayledger/reckoning/step'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { Thing } from '../../../features/arrival/things.ts'
import { chooseStep } from '../work/choose-step.ts'
import type { Stage } from './stage.ts'

/** What was opened by hand; `null`: whatever is next by itself. */
export type Opened =
  | { readonly at: 'thing'; readonly thing: Thing; readonly question?: string }
  | { readonly at: 'wheel'; readonly wheel: WheelPosition }
  | { readonly at: 'step' | 'aside'; readonly stepKey: string }
  | { readonly at: 'plan' | 'written' | 'findings' }

/** The thing of the arrival check to show. */
export const thingShown = (stage: Stage, opened: Opened | null, left: readonly Thing[]): Thing | null => {
  if (opened?.at === 'thing') return opened.thing
  return opened === null && stage === 'arrival' ? (left[0] ?? null) : null
}

/** The step of the plan to show this person. */
export const stepShown = (
  state: OrderState,
  stage: Stage,
  opened: Opened | null,
  staffId: string,
): Step | null => {
  if (stage !== 'work') return null
  const named =
    opened?.at === 'step' || opened?.at === 'aside'
      ? state.plan?.plan.steps.find(({ stepKey }) => stepKey === opened.stepKey && !state.closed[stepKey])
      : undefined
  return named ?? chooseStep(state, staffId, opened?.at === 'wheel' ? opened.wheel : null)
}
