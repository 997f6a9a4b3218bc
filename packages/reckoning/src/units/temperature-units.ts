import type { Temperature } from '../quantity.ts'
import { type Kelvin, kelvins } from './measured.ts'

export type TemperatureUnit = Temperature['unit']

/**
 * A temperature as entered, in kelvin: the only kind that goes into the gas law. 68 °F and 20 °C are 293.15 K.
 *
 * @formula °C + 273.15; (°F + 459.67) / 1.8
 * @units °F or °C to K
 * @limits nothing is refused here; no temperature under 0 K (-459.67 °F, -273.15 °C) exists
 * @source kelvin and degree Celsius as the SI defines them; °F = 1.8 °C + 32 (computed from definition)
 */
export const inKelvin = ({ value, unit }: Temperature): Kelvin =>
  kelvins(unit === 'C' ? value + 273.15 : (value + 459.67) / 1.8)

/**
 * A temperature out of kelvin, unrounded, for showing. 293.15 K is 68 °F.
 *
 * @formula K − 273.15; 1.8 K − 459.67
 * @units K to °F or °C
 * @source as for `inKelvin` (computed from definition)
 */
export const kelvinIn = (unit: TemperatureUnit, kelvin: Kelvin): number =>
  unit === 'C' ? kelvin - 273.15 : kelvin * 1.8 - 459.67

/**
 * A temperature in the other scale, unrounded; in its own it is the figure as entered. -40 °F is -40 °C.
 *
 * @formula °F = 1.8 °C + 32; °C = (°F − 32) / 1.8
 * @units °F or °C to °F or °C
 * @source as for `inKelvin` (computed from definition)
 */
export const temperatureIn = (unit: TemperatureUnit, { value, unit: own }: Temperature): number => {
  if (unit === own) return value
  return unit === 'F' ? value * 1.8 + 32 : (value - 32) / 1.8
}
