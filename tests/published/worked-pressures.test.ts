/**
 * The trade's own questions about pressure with answers worked out by hand from the gas law and the standard
 * atmosphere, to a tenth of a psi. The law and the atmosphere are checked against print in their own files; the caps
 * on a target are common practice, no source.
 */
import { airAtSeaLevel, airPressureAtAltitude } from '@bayledger/reckoning/pressure/air-pressure'
import { setTarget } from '@bayledger/reckoning/pressure/set-target'
import { shiftPressure } from '@bayledger/reckoning/pressure/shift-pressure'
import { kilopascalsPerPsi } from '@bayledger/reckoning/units/exact-factors'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { inKilopascals } from '@bayledger/reckoning/units/pressure-units'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { describe, expect, it } from 'vitest'

const reads = (psi: number, from: number, to: number, setAtFeet = 0, nowAtFeet = setAtFeet) =>
  shiftPressure({
    gauge: inKilopascals({ value: psi, unit: 'psi' }),
    from: inKelvin({ value: from, unit: 'F' }),
    to: inKelvin({ value: to, unit: 'F' }),
    airBefore: airPressureAtAltitude(metersFromFeet(setAtFeet)),
    airAfter: airPressureAtAltitude(metersFromFeet(nowAtFeet)),
  }) / kilopascalsPerPsi

const target = (placardPsi: number, outdoorFahrenheit: number, tireFahrenheit: number, altitudeFeet = 0) =>
  setTarget({
    placardPsi,
    sidewallMaximumPsi: placardPsi > 45 ? 80 : 51,
    outdoorFahrenheit,
    tireFahrenheit,
    tires: 'driven',
    altitudeFeet,
  })

describe('35 psi set at 68 °F', () => {
  it.each([
    [-20, 26.7],
    [0, 28.6],
    [20, 30.5],
    [40, 32.4],
    [88, 36.9],
    [110, 39.0],
  ])('reads at %d °F %d psi', (outdoors, psi) => {
    expect(reads(35, 68, outdoors)).toBeCloseTo(psi, 1)
  })

  it('and nine days later 24.5 at 38 °F has lost 8.1 psi of air; 2.8 psi was weather', () => {
    const now = reads(24.5, 38, 68)
    expect(now).toBeCloseTo(26.9, 1)
    expect((35 - now) / 9).toBeCloseTo(0.9, 2)
    expect(35 - reads(35, 68, 38)).toBeCloseTo(2.8, 1)
  })
})

describe('a tire that is warmer than the air outside', () => {
  it.each([
    [35, 20, 70, 0, 40.2],
    [35, 50, 104, 0, 40.3],
    [33, 19, 64, 820, 37.4],
    [35, 27, 52, 820, 37.5],
    [36, 27, 58, 820, 39.2],
    [42, 27, 58, 820, 45.6],
    [72, 27, 60, 820, 77.8],
    [50, 27, 60, 820, 54.4],
  ])('labeled %d psi, %d °F outside, tire at %d °F, at %d ft: set %d psi', (label, out, tire, feet, psi) => {
    const set = target(label, out, tire, feet)
    expect(set).toMatchObject({ psi, capped: false })
    expect(reads(set.psi, tire, out, feet)).toBeCloseTo(label, 0)
  })

  it('and reads 35.0 hot at 110 °F holds 28.9 cold at 40 °F', () => {
    expect(reads(35, 110, 40)).toBeCloseTo(28.9, 1)
  })

  it('set flat to its label in the bay is 4.1 psi short outdoors', () => {
    expect(reads(33, 64, 19, 820)).toBeCloseTo(28.9, 1)
  })

  it('would need 86.3 psi on an 80 psi sidewall: it gets 80 at most and is set again cold', () => {
    expect(reads(72, 24, 104, 820)).toBeCloseTo(86.3, 1)
    expect(target(72, 24, 104, 820)).toMatchObject({ psi: 80, capped: true })
  })
})

describe('cold alone', () => {
  it('lights the lamp of a tire set to 35 at 70 °F at -23 °F, and at 5 °F once seepage left 32', () => {
    expect(reads(35, 70, -22)).toBeGreaterThan(26.25)
    expect(reads(35, 70, -24)).toBeLessThan(26.25)
    expect(reads(32, 70, 6)).toBeGreaterThan(26.25)
    expect(reads(32, 70, 4)).toBeLessThan(26.25)
  })
})

describe('altitude', () => {
  it.each([
    [33, 7_000, 500, 29.9],
    [35, 500, 7_000, 38.1],
  ])('%d psi set at %d ft reads at %d ft %d psi', (psi, set, now, expected) => {
    expect(reads(psi, 68, 68, set, now)).toBeCloseTo(expected, 1)
  })

  it('makes a sensor that refers to the sea read 2.6 psi low at 5,280 ft', () => {
    const short = airAtSeaLevel - airPressureAtAltitude(metersFromFeet(5_280))
    expect(short / kilopascalsPerPsi).toBeCloseTo(2.6, 1)
  })
})
