import type { Pressure } from '../quantity.ts'
import { kilopascalsPerPsi } from './exact-factors.ts'
import { type GaugeKilopascals, gaugeKilopascals } from './measured.ts'

export type PressureUnit = Pressure['unit']

const kilopascalsPer: Readonly<Record<PressureUnit, number>> = { psi: kilopascalsPerPsi, kPa: 1, bar: 100 }

/** A gauge pressure in kPa. 35 psi is 241.3 kPa. */
export const inKilopascals = ({ value, unit }: Pressure): GaugeKilopascals =>
  gaugeKilopascals(value * kilopascalsPer[unit])

/** A gauge pressure in another unit, unrounded; in its own unit it is the figure as entered. 240 kPa is 34.8 psi. */
export const pressureIn = (unit: PressureUnit, pressure: Pressure): number =>
  unit === pressure.unit ? pressure.value : inKilopascals(pressure) / kilopascalsPer[unit]
