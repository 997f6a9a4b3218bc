/**
 * Source: US Standard Atmosphere 1976 (equal to ISO 2533:1975 below 32 km). Pascal figures were computed from its
 * constants at geopotential altitudes; psi figures were read in two engineering tables, which differ from each other
 * by 0.002 psi.
 */
import { airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { kilopascalsPerPsi } from '@bayledger/reckoning/units/exact-factors'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { meters as asMeters } from '@bayledger/reckoning/units/measured'
import { describe, expect, it } from 'vitest'

describe('the pressure of the open air', () => {
  it.each([
    [0, 101_325],
    [500, 95_460.8],
    [1_000, 89_874.6],
    [1_500, 84_556],
    [1_609.344, 83_427.6],
    [2_000, 79_495.2],
    [3_000, 70_108.5],
    [5_000, 54_019.9],
  ])('at %d m is %d Pa', (meters, pascals) => {
    expect(Math.abs(airPressureAtAltitude(asMeters(meters)) * 1_000 - pascals)).toBeLessThan(1)
  })

  it.each([
    [0, 14.696],
    [1_000, 14.175],
    [2_000, 13.664],
    [3_000, 13.173],
    [5_000, 12.23],
    [7_000, 11.341],
    [10_000, 10.108],
  ])('at %d ft is %d psi, as printed', (feet, psi) => {
    const computed = airPressureAtAltitude(metersFromFeet(feet)) / kilopascalsPerPsi
    expect(Math.abs(computed - psi)).toBeLessThan(0.003)
  })
})
