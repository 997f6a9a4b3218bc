import type { Torque } from '../quantity.ts'
import { newtonMetersPerPoundFoot, newtonMetersPerPoundInch } from './exact-factors.ts'
import { type NewtonMeters, newtonMeters } from './measured.ts'

export type TorqueUnit = Torque['unit']

const newtonMetersPer: Readonly<Record<TorqueUnit, number>> = {
  N·m: 1,
  lbf·ft: newtonMetersPerPoundFoot,
  lbf·in: newtonMetersPerPoundInch,
}

/** A torque in N·m. 100 lbf·ft is 135.6 N·m. */
export const inNewtonMeters = ({ value, unit }: Torque): NewtonMeters =>
  newtonMeters(value * newtonMetersPer[unit])

/** A torque in another unit, unrounded; in its own unit it is the figure as entered. 160 N·m is 118.0 lbf·ft. */
export const torqueIn = (unit: TorqueUnit, torque: Torque): number =>
  unit === torque.unit ? torque.value : inNewtonMeters(torque) / newtonMetersPer[unit]
