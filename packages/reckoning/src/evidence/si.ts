import { kilopascalsPerPsi } from '../units/exact-factors.ts'
import { metersFromFeet } from '../units/length-units.ts'
import { inKilopascals, pressureIn } from '../units/pressure-units.ts'
import { inKelvin } from '../units/temperature-units.ts'
import type { Units } from './evidence-schema.ts'

/** A pressure as entered, in kPa. */
export const kilopascals = (value: number, unit: Units['pressure']): number => inKilopascals({ value, unit })

/** A pressure in kPa, in the unit in which the evidence was entered. */
export const fromKilopascals = (value: number, unit: Units['pressure']): number =>
  pressureIn(unit, { value, unit: 'kPa' })

/** A pressure in psi, the trade's own unit for its limits, in kPa. */
export const psi = (value: number): number => value * kilopascalsPerPsi

/** A temperature as entered, in kelvin. */
export const kelvin = (value: number, unit: Units['temperature']): number => inKelvin({ value, unit })

/** An altitude as entered, in meters. */
export const meters = (value: number, unit: Units['altitude']): number =>
  unit === 'm' ? value : metersFromFeet(value)
