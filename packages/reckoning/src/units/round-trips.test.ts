import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { distanceIn, inMillimeters, type Length, lengthIn, metersFromFeet } from './length-units.ts'
import { inKilopascals, kilopascalsIn, type PressureUnit, pressureIn } from './pressure-units.ts'
import { inKelvin, kelvinIn, type TemperatureUnit, temperatureIn } from './temperature-units.ts'
import { inNewtonMeters, type TorqueUnit, torqueIn } from './torque-units.ts'

const pressureUnit = fc.constantFrom<PressureUnit[]>('psi', 'kPa', 'bar')
const torqueUnit = fc.constantFrom<TorqueUnit[]>('lbf·ft', 'lbf·in', 'N·m')
const temperatureUnit = fc.constantFrom<TemperatureUnit[]>('F', 'C')
const lengthUnit = fc.constantFrom<Length['unit'][]>('mm', '1/32 in', 'in')
const distanceUnit = fc.constantFrom('mi' as const, 'km' as const)
const figure = fc.double({ min: -600, max: 600, noNaN: true })
const fixed = { seed: 20260112, numRuns: 500 }

describe('a figure', () => {
  it('comes back from another unit as it was, on both sides of zero', () => {
    fc.assert(
      fc.property(figure, pressureUnit, pressureUnit, (value, own, other) => {
        const there = pressureIn(other, { value, unit: own })
        expect(pressureIn(own, { value: there, unit: other })).toBeCloseTo(value, 9)
        expect(kilopascalsIn(own, inKilopascals({ value, unit: own }))).toBeCloseTo(value, 9)
      }),
      fixed,
    )
    fc.assert(
      fc.property(figure, torqueUnit, torqueUnit, (value, own, other) => {
        const there = torqueIn(other, { value, unit: own })
        expect(torqueIn(own, { value: there, unit: other })).toBeCloseTo(value, 9)
      }),
      fixed,
    )
    fc.assert(
      fc.property(figure, temperatureUnit, temperatureUnit, (value, own, other) => {
        const there = temperatureIn(other, { value, unit: own })
        expect(temperatureIn(own, { value: there, unit: other })).toBeCloseTo(value, 9)
        expect(kelvinIn(own, inKelvin({ value, unit: own }))).toBeCloseTo(value, 9)
      }),
      fixed,
    )
    fc.assert(
      fc.property(figure, lengthUnit, lengthUnit, (value, own, other) => {
        const there = lengthIn(other, { value, unit: own })
        expect(lengthIn(own, { value: there, unit: other })).toBeCloseTo(value, 9)
      }),
      fixed,
    )
    fc.assert(
      fc.property(figure, distanceUnit, distanceUnit, (value, own, other) => {
        const there = distanceIn(other, { value, unit: own })
        expect(distanceIn(own, { value: there, unit: other })).toBeCloseTo(value, 9)
      }),
      fixed,
    )
  })

  it('stays as typed in its own unit, to the last digit', () => {
    fc.assert(
      fc.property(figure, pressureUnit, torqueUnit, temperatureUnit, lengthUnit, distanceUnit, (...of) => {
        const [value, pressure, torque, temperature, length, distance] = of
        expect(pressureIn(pressure, { value, unit: pressure })).toBe(value)
        expect(torqueIn(torque, { value, unit: torque })).toBe(value)
        expect(temperatureIn(temperature, { value, unit: temperature })).toBe(value)
        expect(lengthIn(length, { value, unit: length })).toBe(value)
        expect(distanceIn(distance, { value, unit: distance })).toBe(value)
      }),
      fixed,
    )
  })

  it('that is larger stays larger in every other unit', () => {
    fc.assert(
      fc.property(figure, figure, temperatureUnit, pressureUnit, (one, other, temperature, pressure) => {
        fc.pre(one < other - 1e-9)
        expect(inKelvin({ value: one, unit: temperature })).toBeLessThan(
          inKelvin({ value: other, unit: temperature }),
        )
        expect(inKilopascals({ value: one, unit: pressure })).toBeLessThan(
          inKilopascals({ value: other, unit: pressure }),
        )
      }),
      fixed,
    )
  })
})

describe('a unit', () => {
  it.each([
    ['psi', inKilopascals({ value: 100, unit: 'psi' }), 689.4757293168],
    ['kPa', inKilopascals({ value: 100, unit: 'kPa' }), 100],
    ['bar', inKilopascals({ value: 100, unit: 'bar' }), 10_000],
    ['lbf·ft', inNewtonMeters({ value: 100, unit: 'lbf·ft' }), 135.58179483314],
    ['lbf·in', inNewtonMeters({ value: 100, unit: 'lbf·in' }), 11.29848290276],
    ['N·m', inNewtonMeters({ value: 100, unit: 'N·m' }), 100],
    ['psi of 240 kPa', pressureIn('psi', { value: 240, unit: 'kPa' }), 34.80905706],
    ['bar of 35 psi', pressureIn('bar', { value: 35, unit: 'psi' }), 2.41316505],
    ['lbf·ft of 160 N·m', torqueIn('lbf·ft', { value: 160, unit: 'N·m' }), 118.00994388],
    ['32nds of 1.6 mm', lengthIn('1/32 in', { value: 1.6, unit: 'mm' }), 2.01574803],
    ['1/32 in', inMillimeters({ value: 32, unit: '1/32 in' }), 25.4],
    ['in', inMillimeters({ value: 10, unit: 'in' }), 254],
    ['mm', inMillimeters({ value: 1.6, unit: 'mm' }), 1.6],
    ['ft', metersFromFeet(1_000), 304.8],
    ['mi', distanceIn('km', { value: 1, unit: 'mi' }), 1.609344],
    ['km', distanceIn('mi', { value: 160.9344, unit: 'km' }), 100],
    ['K of 68 °F', inKelvin({ value: 68, unit: 'F' }), 293.15],
    ['K of 20 °C', inKelvin({ value: 20, unit: 'C' }), 293.15],
    ['°F of 20 °C', temperatureIn('F', { value: 20, unit: 'C' }), 68],
    ['°C of 68 °F', temperatureIn('C', { value: 68, unit: 'F' }), 20],
    ['°F of 293.15 K', kelvinIn('F', inKelvin({ value: 20, unit: 'C' })), 68],
    ['°C of 293.15 K', kelvinIn('C', inKelvin({ value: 68, unit: 'F' })), 20],
  ])('has its size: %s', (_, value, expected) => {
    expect(value).toBeCloseTo(expected, 8)
  })
})
