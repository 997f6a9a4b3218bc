import { expect, it } from 'vitest'
import { airPressureAtAltitude } from '../pressure/air-pressure.ts'
import { shiftPressure } from '../pressure/shift-pressure.ts'
import { atOrBelow } from '../pressure/threshold.ts'
import { warningPoint } from '../pressure/warning-point.ts'
import { inMillimeters, metersFromFeet } from './length-units.ts'
import {
  absoluteKilopascals,
  gaugeKilopascals,
  type Kelvin,
  kelvins,
  kilopascalsApart,
  type Meters,
  type NewtonMeters,
} from './measured.ts'
import { kilopascalsOver, raisedBy } from './pressure-difference.ts'
import { inKilopascals } from './pressure-units.ts'
import { inKelvin } from './temperature-units.ts'
import { inNewtonMeters } from './torque-units.ts'

/*
 * The compiler is what is tested here: each line under a `@ts-expect-error` must not compile, and `npm test` fails
 * where one does. Every function is called once rightly, so that a line cannot fail for another reason.
 */
const tire = inKilopascals({ value: 35, unit: 'psi' })
const cold = inKelvin({ value: 20, unit: 'F' })
const warm = inKelvin({ value: 70, unit: 'F' })
const outside = airPressureAtAltitude(metersFromFeet(820))
const shift = { gauge: tire, from: cold, to: warm, airBefore: outside, airAfter: outside } as const

it('a shift takes gauge pressures, kelvin and absolute pressures, each in its place', () => {
  const mixed = [
    // @ts-expect-error a figure in psi, or any bare number, is no pressure in kPa
    () => shiftPressure({ ...shift, gauge: 35 }),
    // @ts-expect-error a figure that still carries its unit has to be converted first
    () => shiftPressure({ ...shift, gauge: { value: 35, unit: 'psi' } }),
    // @ts-expect-error the air outside is absolute; a tire's pressure is not
    () => shiftPressure({ ...shift, gauge: outside }),
    // @ts-expect-error a gauge pressure is no pressure of the open air
    () => shiftPressure({ ...shift, airBefore: tire }),
    // @ts-expect-error a difference of pressures is no pressure
    () => shiftPressure({ ...shift, gauge: kilopascalsApart(3) }),
    // @ts-expect-error a number in °F or °C is no temperature in kelvin
    () => shiftPressure({ ...shift, to: 70 }),
    // @ts-expect-error a pressure is no temperature
    () => shiftPressure({ ...shift, from: tire }),
  ]
  expect(mixed).toHaveLength(7)
  expect(shiftPressure(shift)).toBeGreaterThan(tire)
})

it('an altitude is in meters, a tread depth is not', () => {
  const mixed = [
    // @ts-expect-error feet, or any bare number
    () => airPressureAtAltitude(820),
    // @ts-expect-error millimeters where meters are expected
    () => airPressureAtAltitude(inMillimeters({ value: 10, unit: '1/32 in' })),
  ]
  expect(mixed).toHaveLength(2)
  expect(outside).toBeLessThan(101.325)
})

it('a pressure is compared with a pressure of its own kind', () => {
  const mixed = [
    // @ts-expect-error a bare number, be it psi or kPa
    () => atOrBelow(tire, 26.25),
    // @ts-expect-error a gauge pressure with one that is absolute
    () => atOrBelow(tire, outside),
    // @ts-expect-error a pressure with a difference
    () => atOrBelow(tire, kilopascalsApart(20)),
    // @ts-expect-error the difference between gauge and absolute is the open air, not a difference between two tires
    () => kilopascalsOver(tire, outside),
    // @ts-expect-error two pressures do not add up
    () => raisedBy(tire, tire),
  ]
  expect(mixed).toHaveLength(5)
  expect(atOrBelow(tire, gaugeKilopascals(241.3))).toBe(true)
  expect(kilopascalsOver(raisedBy(tire, kilopascalsApart(3)), tire)).toBeCloseTo(3, 12)
})

it('a warning point is of a gauge pressure in kPa', () => {
  const of = { placard: tire, makersTrigger: null, loadClass: 'SL', column: 'psi' } as const
  const mixed = [
    // @ts-expect-error a label's figure in psi
    () => warningPoint({ ...of, placard: 35 }),
    // @ts-expect-error an absolute pressure
    () => warningPoint({ ...of, placard: absoluteKilopascals(241) }),
    // @ts-expect-error a maker's trigger in psi
    () => warningPoint({ ...of, makersTrigger: 28 }),
  ]
  expect(mixed).toHaveLength(3)
  expect(warningPoint(of)).toBeCloseTo(180.99, 2)
})

it('a torque in N·m is no bare number, length or temperature', () => {
  const tightened = inNewtonMeters({ value: 100, unit: 'lbf·ft' })
  const mixed = [
    // @ts-expect-error a figure in lbf·ft
    (): NewtonMeters => 100,
    // @ts-expect-error a length
    (): NewtonMeters => metersFromFeet(100),
    // @ts-expect-error a torque is no length
    (): Meters => tightened,
    // @ts-expect-error nor is it a temperature
    (): Kelvin => tightened,
    // @ts-expect-error a sum of two torques has to be named again
    (): NewtonMeters => tightened + tightened,
    // @ts-expect-error a figure in a unit that no torque has
    () => inNewtonMeters({ value: 100, unit: 'psi' }),
  ]
  expect(mixed).toHaveLength(6)
  expect(tightened).toBeCloseTo(135.58, 2)
})

it('a temperature counted from absolute zero is always in kelvin', () => {
  // @ts-expect-error a temperature in °C
  const mixed = (): Kelvin => 20
  expect(kelvins(mixed())).toBe(20)
})
