/**
 * Source: the same air moved in altitude at one temperature, by the standard atmosphere: gauge pressure changes by as
 * much as the open air does, the other way. Computed by hand.
 */
import { airAtSeaLevel, airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { lostToAltitude } from '@bayledger/reckoning/pressure/altitude-change'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { type Meters, meters } from '@bayledger/reckoning/units/measured'
import { kilopascalsIn } from '@bayledger/reckoning/units/pressure-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'
import { shownPsi } from './shifted.ts'

const lost = (there: Meters, here: Meters) =>
  lostToAltitude(airPressureAtAltitude(there), airPressureAtAltitude(here))

const moves = [
  [32, 0, 5_000, 34.47],
  [33, 5_280, 0, 30.4],
] as const

published(
  {
    document: 'US Standard Atmosphere 1976 = ISO 2533:1975',
    section: 'a tire moved in altitude',
    certainty: 'computed from definition',
  },
  () => {
    it.each(moves)('%d psi set at %d ft reads at %d ft %d psi', (psi, there, here, expected) => {
      const reads = psi - kilopascalsIn('psi', lost(metersFromFeet(there), metersFromFeet(here)))
      expect(Math.abs(reads - expected)).toBeLessThan(0.006)
    })

    it.each(moves)('%d psi from %d to %d ft is %d by the shift too', (psi, there, here, expected) => {
      expect(Math.abs(shownPsi(psi, 68, 68, there, here) - expected)).toBeLessThan(0.006)
    })

    it('230 kPa at the sea reads 246.8 kPa at 1,500 m', () => {
      expect(230 - lostToAltitude(airAtSeaLevel, airPressureAtAltitude(meters(1_500)))).toBeCloseTo(246.8, 1)
    })

    it('a tire that stays where it is loses nothing', () => {
      expect(lost(meters(800), meters(800))).toBe(0)
    })
  },
)
