import type { Units } from './evidence-schema.ts'

const kilopascalsPer: Readonly<Record<Units['pressure'], number>> = { psi: 6.894757, kPa: 1, bar: 100 }

/** A pressure as entered, in kPa. */
export const kilopascals = (value: number, unit: Units['pressure']): number => value * kilopascalsPer[unit]

/** A pressure in kPa, in the unit in which the evidence was entered. */
export const fromKilopascals = (value: number, unit: Units['pressure']): number =>
  value / kilopascalsPer[unit]

/** A pressure in psi, the trade's own unit for its limits, in kPa. */
export const psi = (value: number): number => kilopascals(value, 'psi')

/** A temperature as entered, in kelvin. */
export const kelvin = (value: number, unit: Units['temperature']): number =>
  unit === 'C' ? value + 273.15 : (value + 459.67) / 1.8

/** An altitude as entered, in meters. */
export const meters = (value: number, unit: Units['altitude']): number =>
  unit === 'm' ? value : value * 0.3048
