/**
 * Sources: the gas law at constant volume, (p1 + pa)/T1 = (p2 + pa)/T2. One case was read in print (a club mailing
 * list of July 2002: 20 psi at 70 °F, with 14.7 psi and 460 rounded). The other cases were computed by hand with
 * pa = 14.69595 psi (101.325 kPa) and absolute zero at -459.67 °F.
 */
import { airAtSeaLevel, airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { kilopascalsPerPsi } from '@bayledger/reckoning/units/exact-factors'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { gaugeKilopascals } from '@bayledger/reckoning/units/measured'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'

const air = airAtSeaLevel
const fahrenheit = (value: number) => inKelvin({ value, unit: 'F' })
const shiftedPsi = (psi: number, from: number, to: number, airBefore = air, airAfter = air) =>
  shiftPressure({
    gauge: inKilopascals({ value: psi, unit: 'psi' }),
    from: fahrenheit(from),
    to: fahrenheit(to),
    airBefore,
    airAfter,
  }) / kilopascalsPerPsi

describe('the gas law', () => {
  it.each([
    [20, 70, 50, 18.7],
    [20, 70, 130, 23.9],
  ])('read in print: %d psi at %d °F is at %d °F %d psi', (psi, from, to, printed) => {
    expect(shiftedPsi(psi, from, to)).toBeCloseTo(printed, 1)
  })

  it.each([
    [32, 68, 58, 31.115],
    [32, 68, 38, 29.345],
    [35, 70, 20, 30.309],
    [35, 70, 80, 35.938],
    [30, 90, 10, 23.495],
    [44, 68, -20, 34.211],
    [80, 68, 28, 72.822],
  ])('by hand: %d psi at %d °F is at %d °F %d psi', (psi, from, to, expected) => {
    expect(shiftedPsi(psi, from, to)).toBeCloseTo(expected, 2)
  })

  it.each([
    [220, 20, 0, 198.08],
    [230, 20, -10, 196.09],
    [250, 25, 5, 226.43],
    [290, 20, 50, 330.05],
  ])('by hand: %d kPa at %d °C is at %d °C %d kPa', (kPa, from, to, expected) => {
    const shifted = shiftPressure({
      gauge: gaugeKilopascals(kPa),
      from: inKelvin({ value: from, unit: 'C' }),
      to: inKelvin({ value: to, unit: 'C' }),
      airBefore: air,
      airAfter: air,
    })
    expect(shifted).toBeCloseTo(expected, 1)
  })

  it('is not the rule of three on gauge pressure alone, which would say 30.2', () => {
    expect(shiftedPsi(32, 68, 38)).toBeLessThan(29.5)
  })

  it.each([
    [32, 0, 5_000, 34.47],
    [33, 5_280, 0, 30.4],
  ])('by hand: %d psi set at %d ft reads at %d ft %d psi', (psi, before, after, expected) => {
    const airAt = (feet: number) => airPressureAtAltitude(metersFromFeet(feet))
    expect(shiftedPsi(psi, 68, 68, airAt(before), airAt(after))).toBeCloseTo(expected, 2)
  })

  it('there and back again is where it began', () => {
    const temperature = fc.integer({ min: -40, max: 200 })
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 100 }), temperature, temperature, (psi, from, to) => {
        expect(shiftedPsi(shiftedPsi(psi, from, to), to, from)).toBeCloseTo(psi, 8)
      }),
      { seed: 20260112 },
    )
  })
})
