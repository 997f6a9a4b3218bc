/**
 * Source: US Standard Atmosphere 1976, equal to ISO 2533:1975 below 32 km: p = 101325 (1 − 0.0065 h / 288.15)^5.255876
 * at geopotential altitudes. Its constants were read in two restatements; the pascals were computed from them.
 */
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { meters } from '@bayledger/reckoning/units/measured'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  {
    document: 'US Standard Atmosphere 1976 = ISO 2533:1975',
    section: 'lowest layer',
    certainty: 'computed from definition',
  },
  () => {
    it.each([
      [0, 101_325],
      [500, 95_460.8],
      [1_000, 89_874.6],
      [1_500, 84_556],
      [1_609.344, 83_427.6],
      [2_000, 79_495.2],
      [3_000, 70_108.5],
      [5_000, 54_019.9],
    ])('at %d m of geopotential altitude the air has %d Pa', (altitude, pascals) => {
      expect(Math.abs(airPressureAtAltitude(meters(altitude)) * 1_000 - pascals)).toBeLessThan(0.1)
    })

    it.each([
      [1_000, 89_876.3],
      [2_000, 79_501.4],
      [3_000, 70_121.2],
    ])('at %d m of geometric altitude it has %d Pa, which is the same within 15 Pa', (altitude, pascals) => {
      expect(Math.abs(airPressureAtAltitude(meters(altitude)) * 1_000 - pascals)).toBeLessThan(15)
    })

    it('at the end of the layer, 11,000 m, it has 22,632 Pa', () => {
      expect(airPressureAtAltitude(meters(11_000)) * 1_000).toBeCloseTo(22_632, -1)
    })
  },
)
