import { type RoadPosition, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import { isSettledByWork } from './finding-holds.ts'
import { refusableFinding } from './remedies.ts'
import { openTroubles } from './troubles.ts'

/**
 * The wheel in whose place the sound spare goes on, because the customer refused on record to have its danger put right
 * and the vehicle leaves on its spare; `null` if none does. A later Yes ends it.
 */
export const spareWheel = (state: OrderState): RoadPosition | null =>
  roadPositions.find((wheel) =>
    (state.diagnosis?.diagnosis.findings ?? []).some(({ code, ...finding }) => {
      const refusal = state.refusals[code]
      return (
        refusal?.leaves === 'sound-spare' &&
        refusal.wheels.includes(wheel) &&
        finding.wheels.includes(wheel) &&
        !isSettledByWork(state, { code, ...finding }) &&
        !openTroubles(state).some(
          (trouble) =>
            trouble.wheel === wheel &&
            refusableFinding(trouble.what) === code &&
            trouble.waitsFor !== 'answer' &&
            trouble.waitsFor !== 'refused',
        )
      )
    }),
  ) ?? null

/** Whether the wheel that stands at a place is the spare. */
export const isSpareOn = ({ work }: OrderState, wheel: WheelPosition): boolean =>
  work[wheel]?.mounted?.cameFrom === 'SP'

/** Whether the plan in force does not bring the spare to the wheel where it has to go on. */
export const planLacksSpare = (state: OrderState): boolean => {
  const wheel = spareWheel(state)
  return (
    wheel !== null &&
    !isSpareOn(state, wheel) &&
    !(state.plan?.plan.steps ?? []).some(
      (step) => step.wheel === wheel && step.closedBy === 'wheel.mounted' && step.comesFrom === 'SP',
    )
  )
}
