import { readySteps } from '@bayledger/ledger/questions/gates'
import { whyNot } from '@bayledger/ledger/questions/why-not'
import type { OrderState } from '@bayledger/ledger/state'
import { readingOrder, roadPositions, type WheelPosition } from '@bayledger/reckoning/wheels'

export type Phase = 'arrival' | 'closing'

/** A wheel whose sensor is asked, and the step of the plan that its reading closes: none on arrival. */
type Asked = { readonly wheel: WheelPosition; readonly stepKey: string | null }

/** On arrival each wheel that has a sensor; at the end those of which a reading may close a step now. */
export const wheelsAsked = (state: OrderState, phase: Phase): readonly Asked[] =>
  phase === 'arrival'
    ? (state.sheet?.sheet.spareMonitored ? readingOrder : roadPositions).map((wheel) => ({
        wheel,
        stepKey: null,
      }))
    : readySteps(state).flatMap((step) => {
        const { wheel, stepKey } = step
        const isDue = step.closedBy === 'wheel.checked' && whyNot(state, step) === null
        return wheel !== null && isDue ? [{ wheel, stepKey }] : []
      })
