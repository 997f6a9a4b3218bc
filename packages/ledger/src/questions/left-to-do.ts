import type { StepCounts } from '@bayledger/reckoning/ready/ready-time'
import type { TimedCode } from '@bayledger/reckoning/ready/step-seconds'
import type { OrderState } from '../state.ts'
import { openSteps } from './gates.ts'

/** What an order's ready time is computed from: nothing in it changes because time passed. */
export type LeftToDo = {
  /** Open steps of the plan by what they are; none once everything is done. */
  readonly steps: StepCounts
  /** Somebody has closed a step: the vehicle waits for nobody to begin. */
  readonly begun: boolean
  /** When the part that it waits for was promised, UTC text. */
  readonly partAt: string | null
  /** Until when it waits for something that somebody named, UTC text. */
  readonly waitsUntil: string | null
}

/** What is left of the plan; `null` before there is one, and after the hand-back. */
export const leftToDo = (state: OrderState): LeftToDo | null => {
  if (!state.plan || state.handedBack || state.ended) return null
  return {
    steps: countedSteps(openSteps(state).map(({ code }) => code)),
    begun: state.plan.plan.steps.some(
      ({ stepKey, closedBy }) => closedBy !== 'figure.confirmed' && state.closed[stepKey],
    ),
    partAt: state.promised?.promisedAt ?? null,
    waitsUntil: state.wait?.until ?? null,
  }
}

/** How many there are of each. */
export const countedSteps = (codes: readonly TimedCode[]): StepCounts => {
  const counts: Partial<Record<TimedCode, number>> = {}
  for (const code of codes) counts[code] = (counts[code] ?? 0) + 1
  return counts
}
