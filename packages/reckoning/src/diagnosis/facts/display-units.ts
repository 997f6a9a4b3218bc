import type { Units } from '../../evidence/evidence-schema.ts'
import { fromKilopascals } from '../../evidence/si.ts'
import { kelvins } from '../../units/measured.ts'
import { kelvinIn } from '../../units/temperature-units.ts'

/** Turns kPa and kelvin back into the units in which the evidence was entered. */
export type Shown = {
  readonly unit: Units['pressure']
  /** The number alone, rounded to what a reader can use. */
  readonly pressureNumber: (kilopascals: number) => number
  readonly pressure: (kilopascals: number) => string
  readonly temperatureNumber: (kelvin: number) => number
  readonly temperature: (kelvin: number) => string
  /** A difference of temperatures. */
  readonly degreesNumber: (kelvin: number) => number
  readonly degrees: (kelvin: number) => string
  readonly temperatureUnit: Units['temperature']
}

const decimals: Readonly<Record<Units['pressure'], number>> = { psi: 2, kPa: 1, bar: 3 }

export const shownIn = (units: Units): Shown => {
  const fahrenheit = units.temperature === 'F'
  const pressureNumber = (kilopascals: number): number =>
    Number(fromKilopascals(kilopascals, units.pressure).toFixed(decimals[units.pressure]))
  const temperatureNumber = (kelvin: number): number =>
    Math.round(kelvinIn(units.temperature, kelvins(kelvin)))
  const degreesNumber = (kelvin: number): number => Math.round(fahrenheit ? kelvin * 1.8 : kelvin)
  return {
    unit: units.pressure,
    pressureNumber,
    pressure: (kilopascals) => `${pressureNumber(kilopascals)} ${units.pressure}`,
    temperatureNumber,
    temperature: (kelvin) => `${temperatureNumber(kelvin)} °${units.temperature}`,
    degreesNumber,
    degrees: (kelvin) => `${degreesNumber(kelvin)} °${units.temperature}`,
    temperatureUnit: units.temperature,
  }
}
