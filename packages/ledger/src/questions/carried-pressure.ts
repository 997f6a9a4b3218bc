import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import type { Pressure, Temperature } from '@bayledger/reckoning/quantity'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin, temperatureIn } from '@bayledger/reckoning/units/temperature-units'
import type { WheelWork } from '../state.ts'

type PressureSet = NonNullable<WheelWork['pressure']>

/** The temperature of the air in a tire as it was set; `null` where nobody read it and the tire was not cold. */
export const airWhenSet = ({ surroundings }: PressureSet): Temperature | null =>
  surroundings.tire ?? (surroundings.tires === 'cold' ? surroundings.outdoor : null)

/**
 * What a tire, as it was set, shows once its air is at another temperature, at the shop's altitude: psi gauge, unrounded.
 * `null` where the temperature of its air was not read.
 */
export const carriedPsi = (set: PressureSet, to: Temperature): number | null => {
  const from = airWhenSet(set)
  return from && shifted(set.asLeft, from, to, set.surroundings.altitudeFeet)
}

/**
 * The label's figure carried from the outdoor temperature to the tire's own, before any limit and any rounding: psi gauge.
 * `null` where the temperature of the tire's air was not read; the label's own figure was the target then.
 */
export const unroundedTargetPsi = (set: PressureSet): number | null => {
  const to = airWhenSet(set)
  const { outdoor, altitudeFeet } = set.surroundings
  return to && shifted({ value: set.target.placardPsi, unit: 'psi' }, outdoor, to, altitudeFeet)
}

const shifted = (gauge: Pressure, from: Temperature, to: Temperature, altitudeFeet: number): number => {
  const air = airPressureAtAltitude(metersFromFeet(altitudeFeet))
  return kilopascalsIn(
    'psi',
    shiftPressure({
      gauge: inKilopascals(gauge),
      from: inKelvin(from),
      to: inKelvin(to),
      airBefore: air,
      airAfter: air,
    }),
  )
}

/**
 * How hot the air in a tire may well be after a drive: 50 °F over the outdoors, and no less than 100 °F. Common practice,
 * no source: it says by how much a warm gauge may mislead, and nothing is set by it.
 */
export const airAfterADrive = (outdoor: Temperature): Temperature => ({
  value: Math.max(100, Math.round(temperatureIn('F', outdoor)) + 50),
  unit: 'F',
})
