import * as fc from 'fast-check'
import { expect, it } from 'vitest'
import { gaugeKilopascals, kelvins, meters } from '../units/measured.ts'
import { airAtSeaLevel, airPressureAtAltitude } from './air-pressure.ts'
import { shiftPressure } from './shift-pressure.ts'
import { marginOverWarning, temperatureThatWarns } from './warning-margin.ts'

it('the margin is what a tire may still lose; under the warning point it is negative', () => {
  expect(marginOverWarning(gaugeKilopascals(240), gaugeKilopascals(180))).toBe(60)
  expect(marginOverWarning(gaugeKilopascals(170), gaugeKilopascals(180))).toBe(-10)
})

it('at the warning temperature, the tire is at its warning point', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 150, max: 600, noNaN: true }).map(gaugeKilopascals),
      fc.double({ min: 0.5, max: 0.99, noNaN: true }),
      fc.double({ min: 230, max: 330, noNaN: true }).map(kelvins),
      fc.double({ min: 0, max: 4_000, noNaN: true }).map((one) => airPressureAtAltitude(meters(one))),
      (gauge, share, at, air) => {
        const warn = gaugeKilopascals(gauge * share)
        const to = temperatureThatWarns({ gauge, at, warn, air })
        expect(to).toBeLessThan(at)
        const there = shiftPressure({ gauge, from: at, to, airBefore: air, airAfter: air })
        expect(there).toBeCloseTo(warn, 8)
      },
    ),
    { seed: 20260112 },
  )
})

it('a tire at its warning point already lights the light', () => {
  const gauge = gaugeKilopascals(180)
  expect(temperatureThatWarns({ gauge, at: kelvins(280), warn: gauge, air: airAtSeaLevel })).toBeCloseTo(
    280,
    10,
  )
})
