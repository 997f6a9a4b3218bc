/**
 * Source: two engineering data sites' tables of the standard atmosphere in psi, read: engineeringtoolbox.com (standard
 * atmosphere, d_604) and engineersedge.com (standard atmospheric data). They differ from each other by 0.002 psi, so
 * agreement is required within 0.003.
 */
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const psiPerKilopascal = 1 / 6.894757

published(
  {
    document: 'Engineering data sites, tables of the standard atmosphere',
    section: 'psi by feet',
    certainty: 'read',
  },
  () => {
    it.each([
      [0, 14.696],
      [1_000, 14.175],
      [2_000, 13.664],
      [3_000, 13.173],
      [5_000, 12.228],
      [5_000, 12.23],
      [7_000, 11.341],
      [10_000, 10.108],
    ])('at %d ft: %d psi', (feet, psi) => {
      const computed = airPressureAtAltitude(metersFromFeet(feet)) * psiPerKilopascal
      expect(Math.abs(computed - psi)).toBeLessThan(0.003)
    })
  },
)
