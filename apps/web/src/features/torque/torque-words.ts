import type { Torque } from '@bayledger/reckoning/quantity'
import { torqueIn } from '@bayledger/reckoning/units/torque-units'

/** The same torque in the other system, whole or to a tenth below 20: for reading only, never for setting. */
export const otherUnit = (torque: Torque, fastener: 'wheel' | 'sensor'): Torque => {
  const unit = torque.unit === 'N·m' ? (fastener === 'wheel' ? 'lbf·ft' : 'lbf·in') : 'N·m'
  const value = torqueIn(unit, torque)
  return { value: value < 20 ? Math.round(value * 10) / 10 : Math.round(value), unit }
}
