/**
 * Sources: definitions that are exact (inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s²), as NIST
 * SP 811 (2008) restates them; its appendix B.8, seven figures, is quoted from memory. 6.894757 kPa a psi was also
 * read in a printed handbook table. The rest was multiplied out by hand.
 */
import { inMiles, metersFromFeet, millimetersFrom32nds } from '@bayledger/reckoning/units/length-units'
import { inKilopascals, pressureIn } from '@bayledger/reckoning/units/pressure-units'
import { inCelsius, inFahrenheit, inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { inNewtonMeters, torqueIn } from '@bayledger/reckoning/units/torque-units'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'

describe('a pressure', () => {
  it.each([
    [20, 137.895],
    [26, 179.264],
    [35, 241.317],
    [36, 248.211],
    [51, 351.633],
    [80, 551.581],
  ])('of %d psi is %d kPa', (psi, kPa) => {
    expect(inKilopascals({ value: psi, unit: 'psi' })).toBeCloseTo(kPa, 3)
  })

  it('of one bar is 100 kPa and 14.503774 psi', () => {
    expect(inKilopascals({ value: 1, unit: 'bar' })).toBe(100)
    expect(pressureIn('psi', { value: 1, unit: 'bar' })).toBeCloseTo(14.503774, 6)
    expect(inKilopascals({ value: 1, unit: 'psi' })).toBeCloseTo(6.894757293168, 12)
  })
})

describe('a torque', () => {
  it.each([
    [70, 94.907],
    [80, 108.465],
    [100, 135.582],
    [140, 189.815],
  ])('of %d lbf·ft is %d N·m', (poundFeet, newtonMeters) => {
    expect(inNewtonMeters({ value: poundFeet, unit: 'lbf·ft' })).toBeCloseTo(newtonMeters, 3)
  })

  it('of 62 lbf·in is 7.0 N·m, and a twelfth of as many lbf·ft', () => {
    expect(inNewtonMeters({ value: 62, unit: 'lbf·in' })).toBeCloseTo(7.005, 3)
    expect(inNewtonMeters({ value: 1, unit: 'lbf·in' })).toBeCloseTo(0.1129848290276, 12)
    expect(torqueIn('lbf·ft', { value: 120, unit: 'lbf·in' })).toBeCloseTo(10, 12)
  })
})

describe('a temperature', () => {
  it('of 68 °F is 20 °C and 293.15 K; -40 is the same in both', () => {
    expect(inCelsius({ value: 68, unit: 'F' })).toBeCloseTo(20, 12)
    expect(inKelvin({ value: 68, unit: 'F' })).toBeCloseTo(293.15, 10)
    expect(inKelvin({ value: 20, unit: 'C' })).toBeCloseTo(293.15, 10)
    expect(inFahrenheit({ value: -40, unit: 'C' })).toBe(-40)
  })
})

describe('a length', () => {
  it('has a foot of 0.3048 m and a mile of 1,609.344 m', () => {
    expect(metersFromFeet(1)).toBeCloseTo(0.3048, 12)
    expect(inMiles({ value: 1.609344, unit: 'km' })).toBeCloseTo(1, 12)
    expect(inMiles({ value: 62, unit: 'mi' })).toBe(62)
  })

  it.each([
    [1, 0.79375],
    [2, 1.5875],
    [4, 3.175],
    [10, 7.9375],
  ])('of %d/32 in is %d mm', (thirtySeconds, millimeters) => {
    expect(millimetersFrom32nds(thirtySeconds)).toBeCloseTo(millimeters, 10)
  })
})

describe('a figure', () => {
  it('comes back from another unit as it was, and stays as typed in its own', () => {
    const value = fc.double({ min: 0, max: 400, noNaN: true })
    fc.assert(
      fc.property(value, fc.constantFrom('psi', 'kPa', 'bar'), (typed, unit) => {
        expect(pressureIn(unit, { value: typed, unit })).toBe(typed)
        const elsewhere = pressureIn('kPa', { value: typed, unit })
        expect(pressureIn(unit, { value: elsewhere, unit: 'kPa' })).toBeCloseTo(typed, 9)
      }),
      { seed: 20260112 },
    )
  })
})
