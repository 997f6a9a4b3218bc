import type { Torque } from '../quantity.ts'
import { newtonMetersPerPoundFoot, newtonMetersPerPoundInch } from './exact-factors.ts'
import { type NewtonMeters, newtonMeters } from './measured.ts'

export type TorqueUnit = Torque['unit']

const newtonMetersPer: Readonly<Record<TorqueUnit, number>> = {
  N·m: 1,
  lbf·ft: newtonMetersPerPoundFoot,
  lbf·in: newtonMetersPerPoundInch,
}

/**
 * A torque as entered, in N·m. 100 lbf·ft is 135.6 N·m.
 *
 * @formula lbf·ft × 1.3558179483314; lbf·in × 0.1129848290276
 * @units lbf·ft, lbf·in or N·m to N·m
 * @source pound 0.45359237 kg, standard gravity 9.80665 m/s², inch 25.4 mm (computed from definition)
 */
export const inNewtonMeters = ({ value, unit }: Torque): NewtonMeters =>
  newtonMeters(value * newtonMetersPer[unit])

/**
 * A torque in another unit, unrounded; in its own unit it is the figure as entered. 160 N·m is 118.0 lbf·ft. A
 * fastener is tightened to the vehicle maker's figure in the unit that the maker printed; a converted one is for
 * showing beside it.
 *
 * @formula as `inNewtonMeters`, and back by the same factor
 * @units lbf·ft, lbf·in or N·m to lbf·ft, lbf·in or N·m
 * @source as for `inNewtonMeters` (computed from definition)
 */
export const torqueIn = (unit: TorqueUnit, torque: Torque): number =>
  unit === torque.unit ? torque.value : inNewtonMeters(torque) / newtonMetersPer[unit]
