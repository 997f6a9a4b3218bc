import type { Units } from '../../evidence/evidence-schema.ts'
import { fromKilopascals } from '../../evidence/si.ts'
import { kelvins } from '../../units/measured.ts'
import { kelvinIn } from '../../units/temperature-units.ts'

/** Turns kPa and kelvin back into the units of the evidence, rounded to what a reader can use. */
export type DisplayUnits = {
  readonly unit: Units['pressure']
  readonly pressure: (kilopascals: number) => number
  readonly temperatureUnit: Units['temperature']
  readonly temperature: (kelvin: number) => number
  /** A difference of temperatures. */
  readonly degrees: (kelvin: number) => number
}

const decimals: Readonly<Record<Units['pressure'], number>> = { psi: 2, kPa: 1, bar: 3 }

/** The units in which evidence was entered, to give its figures back in. */
export const displayUnits = ({ pressure, temperature }: Units): DisplayUnits => ({
  unit: pressure,
  pressure: (kilopascals) => Number(fromKilopascals(kilopascals, pressure).toFixed(decimals[pressure])),
  temperatureUnit: temperature,
  temperature: (kelvin) => Math.round(kelvinIn(temperature, kelvins(kelvin))),
  degrees: (kelvin) => Math.round(temperature === 'F' ? kelvin * 1.8 : kelvin),
})
