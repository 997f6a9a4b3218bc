import type { Temperature } from '../quantity.ts'
import { type Kelvin, kelvins } from './measured.ts'

/** A temperature in kelvin. 68 °F and 20 °C are 293.15 K. */
export const inKelvin = ({ value, unit }: Temperature): Kelvin =>
  kelvins(unit === 'C' ? value + 273.15 : (value + 459.67) / 1.8)

/** A temperature in °F; one typed in °F stays the figure as entered. 20 °C is 68 °F. */
export const inFahrenheit = ({ value, unit }: Temperature): number =>
  unit === 'F' ? value : value * 1.8 + 32

/** A temperature in °C; one typed in °C stays the figure as entered. -40 °F is -40 °C. */
export const inCelsius = ({ value, unit }: Temperature): number => (unit === 'C' ? value : (value - 32) / 1.8)
