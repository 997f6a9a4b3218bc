import type { Distance } from '../quantity.ts'
import { distanceIn } from '../units/length-units.ts'

/** Miles after which the torque of a wheel that was off is looked at again. */
export type RetorqueMiles = { readonly from: number; readonly to: number }

/**
 * The distance where the vehicle maker gives none.
 *
 * @units Miles.
 * @source Common practice, no source: advice that a shop may set otherwise.
 */
export const usualRetorqueMiles: RetorqueMiles = { from: 50, to: 100 }

/**
 * Between which readings of the odometer a wheel that was off comes back for a check of its torque.
 *
 * @formula The odometer at hand-back and the maker's distance, in the odometer's own unit.
 * @units As the odometer was entered, unrounded. 50 to 100 miles from 48,210 km are 48,290 to 48,371 km.
 * @source The vehicle maker's distance governs; else `usualRetorqueMiles`.
 */
export const retorqueWindow = (
  odometer: Distance,
  makers: RetorqueMiles | null,
): { readonly from: Distance; readonly to: Distance } => {
  const { from, to } = makers ?? usualRetorqueMiles
  const after = (miles: number): Distance => ({
    value: odometer.value + distanceIn(odometer.unit, { value: miles, unit: 'mi' }),
    unit: odometer.unit,
  })
  return { from: after(from), to: after(to) }
}
