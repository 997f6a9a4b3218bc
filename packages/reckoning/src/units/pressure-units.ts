import type { Pressure } from '../quantity.ts'
import { kilopascalsPerPsi } from './exact-factors.ts'
import { type GaugeKilopascals, gaugeKilopascals, type KilopascalsApart } from './measured.ts'

export type PressureUnit = Pressure['unit']

const kilopascalsPer: Readonly<Record<PressureUnit, number>> = { psi: kilopascalsPerPsi, kPa: 1, bar: 100 }

/**
 * A gauge pressure as entered, in kPa. 35 psi is 241.3 kPa.
 *
 * @formula psi × 6.894757293168 (pound-force a square inch); bar × 100
 * @units psi, kPa or bar to kPa, gauge to gauge
 * @source pound 0.45359237 kg, standard gravity 9.80665 m/s², inch 25.4 mm, bar 100 kPa (computed from definition)
 */
export const inKilopascals = ({ value, unit }: Pressure): GaugeKilopascals =>
  gaugeKilopascals(value * kilopascalsPer[unit])

/**
 * A gauge pressure, or a difference of two pressures, out of kPa into another unit, unrounded. 240 kPa is 34.8 psi.
 *
 * @formula kPa / 6.894757293168 for psi; kPa / 100 for bar
 * @units kPa to psi, kPa or bar
 * @source as for `inKilopascals` (computed from definition)
 */
export const kilopascalsIn = (unit: PressureUnit, pressure: GaugeKilopascals | KilopascalsApart): number =>
  pressure / kilopascalsPer[unit]

/**
 * A gauge pressure in another unit, unrounded, for showing; in its own unit it is the figure as entered. A label that
 * prints 35 psi and 240 kPa has two figures: neither is ever computed from the other.
 *
 * @formula as `inKilopascals`, then `kilopascalsIn`
 * @units psi, kPa or bar to psi, kPa or bar, gauge to gauge
 * @source as for `inKilopascals` (computed from definition)
 */
export const pressureIn = (unit: PressureUnit, pressure: Pressure): number =>
  unit === pressure.unit ? pressure.value : kilopascalsIn(unit, inKilopascals(pressure))
