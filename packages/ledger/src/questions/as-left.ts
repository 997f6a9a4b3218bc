import type { Pressure } from '@bayledger/reckoning/quantity'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'

/** The last pressure on record after the work: as set, or as gauged at the closing check. */
export const pressureAsLeft = (state: OrderState, wheel: WheelPosition): Pressure | null => {
  const set = state.work[wheel]?.pressure
  const gauged = state.closing.wheels[wheel]?.gauge
  if (!set) return gauged?.pressure ?? null
  return gauged && gauged.written.seq > set.written.seq ? gauged.pressure : set.asLeft
}
