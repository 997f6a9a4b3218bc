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
