import { kilopascalsPerPsi } from '../units/exact-factors.ts'
import { metersFromFeet } from '../units/length-units.ts'
import {
  meters as asMeters,
  type GaugeKilopascals,
  type Kelvin,
  type KilopascalsApart,
  kilopascalsApart,
  type Meters,
} from '../units/measured.ts'
import { inKilopascals, pressureIn } from '../units/pressure-units.ts'
import { inKelvin } from '../units/temperature-units.ts'
import type { Units } from './evidence-schema.ts'

/** A pressure as entered, in kPa. */
export const kilopascals = (value: number, unit: Units['pressure']): GaugeKilopascals =>
  inKilopascals({ value, unit })

/** A pressure in kPa, in the unit in which the evidence was entered. */
export const fromKilopascals = (value: number, unit: Units['pressure']): number =>
  pressureIn(unit, { value, unit: 'kPa' })

/** A gauge pressure in psi, the trade's own unit for its limits, in kPa. */
export const psi = (value: number): GaugeKilopascals => inKilopascals({ value, unit: 'psi' })

/** A difference of pressures in psi, in kPa. */
export const psiApart = (value: number): KilopascalsApart => kilopascalsApart(value * kilopascalsPerPsi)

/** A temperature as entered, in kelvin. */
export const kelvin = (value: number, unit: Units['temperature']): Kelvin => inKelvin({ value, unit })

/** An altitude as entered, in meters. */
export const meters = (value: number, unit: Units['altitude']): Meters =>
  unit === 'm' ? asMeters(value) : metersFromFeet(value)
