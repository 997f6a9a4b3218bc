import type { Bundle } from '@bayledger/reckoning/estimate'
import { inReadingOrder, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../../state.ts'

/** How often a sensor is tried before it counts as dead on arrival (common practice, no source). */
const triesUntilDead = 2

/**
 * Wheels that an estimate gives a plain stem although their sensor is not known to be dead: it answered on arrival, or
 * the vehicle listens there and it was not tried twice. No repair business may knowingly silence what works, 49 USC
 * 30122(b); an agency's letter to the trade of November 2011 lets what was dead on arrival be replaced by a plain stem.
 */
export const silencedWheels = (state: OrderState, bundles: readonly Bundle[]): WheelPosition[] =>
  inReadingOrder(
    bundles.flatMap(({ works }) =>
      works.flatMap((work) =>
        work.kind === 'service-stem' && work.valve === 'plain' && mayStillWork(state, work.wheel)
          ? [work.wheel]
          : [],
      ),
    ),
  )

const mayStillWork = (state: OrderState, wheel: WheelPosition): boolean => {
  const reading = state.arrival.wheels[wheel]?.sensor?.reading
  if (reading?.answer === 'answered') return true
  return isListenedTo(state, wheel) && !(reading?.answer === 'silent' && reading.tries >= triesUntilDead)
}

const isListenedTo = ({ sheet }: OrderState, wheel: WheelPosition): boolean =>
  sheet?.sheet.system === 'direct' && (wheel !== 'SP' || sheet.sheet.spareMonitored)
