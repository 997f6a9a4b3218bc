import { workCautions } from '@bayledger/reckoning/cautions/work-cautions'
import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import type { TireDangers } from '@bayledger/reckoning/job-plan/tire-dangers'
import { inReadingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'

/** What the findings in force say of tires before they are opened. A danger whose wheel nobody knows concerns every road wheel. */
export const tireDangers = (state: OrderState): TireDangers => ({
  sealant: wheelsWith(state, 'sealant-inside'),
  runLow: wheelsWith(state, 'run-low-damage-possible'),
})

const wheelsWith = (state: OrderState, danger: FindingCode): WheelPosition[] =>
  inReadingOrder(
    (state.diagnosis?.diagnosis.findings ?? [])
      .filter(({ code }) => code === danger)
      .flatMap(({ wheels }): readonly WheelPosition[] => (wheels.length === 0 ? roadPositions : wheels)),
  )

/**
 * Whether a tire that is still to be opened is now known to be dangerous in a way that the plan in force does not respect:
 * the plan is then issued again.
 */
export const planLacksCare = (state: OrderState): boolean => {
  const steps = state.plan?.plan.steps ?? []
  const { sealant, runLow } = tireDangers(state)
  return steps.some(({ opensTire, stepKey, wheel, cautions }) => {
    if (!opensTire || wheel === null || state.closed[stepKey]) return false
    const isPurged = steps.some((step) => step.closedBy === 'sealant.purged' && step.wheel === wheel)
    const knowsRunLow = cautions.some(({ number }) => number === workCautions.runLow.number)
    return (sealant.includes(wheel) && !isPurged) || (runLow.includes(wheel) && !knowsRunLow)
  })
}
