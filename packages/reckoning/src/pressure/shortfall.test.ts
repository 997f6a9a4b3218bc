import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { psi } from '../evidence/si.ts'
import { gaugeKilopascals, kelvins, meters } from '../units/measured.ts'
import { kilopascalsIn } from '../units/pressure-units.ts'
import { inKelvin } from '../units/temperature-units.ts'
import type { GaugedTire } from './air-loss.ts'
import { airAtSeaLevel, airPressureAtAltitude } from './air-pressure.ts'
import { shiftPressure } from './shift-pressure.ts'
import { shortfallSince } from './shortfall.ts'

const tire = (value: number, fahrenheit: number, air = airAtSeaLevel): GaugedTire => ({
  gauge: psi(value),
  temperature: inKelvin({ value: fahrenheit, unit: 'F' }),
  air,
})
const inPsi = (kPa: number) => kilopascalsIn('psi', gaugeKilopascals(kPa))

const anyTire = fc
  .record({
    gauge: fc.double({ min: 50, max: 700, noNaN: true }),
    temperature: fc.double({ min: 240, max: 340, noNaN: true }),
    altitude: fc.double({ min: -100, max: 4_000, noNaN: true }),
  })
  .map(
    ({ gauge, temperature, altitude }): GaugedTire => ({
      gauge: gaugeKilopascals(gauge),
      temperature: kelvins(temperature),
      air: airPressureAtAltitude(meters(altitude)),
    }),
  )
const fixed = { seed: 20261130, numRuns: 500 }

describe('what a tire lacks since it was set', () => {
  it('is part cold and part lost air', () => {
    const { total, byTemperature, byAltitude, byLostAir } = shortfallSince(tire(33, 68), tire(26.9, 32))
    expect(inPsi(total)).toBeCloseTo(6.1, 9)
    expect(inPsi(byTemperature)).toBeCloseTo(33 + 14.69595 - (33 + 14.69595) * (491.67 / 527.67), 4)
    expect(byAltitude).toBe(0)
    expect(inPsi(byLostAir)).toBeCloseTo(6.1 - inPsi(byTemperature), 9)
  })

  it('is all lost air where nothing else changed', () => {
    expect(shortfallSince(tire(33, 68), tire(29, 68))).toMatchObject({ byTemperature: 0, byAltitude: 0 })
  })

  it('is more lost air than the gauge shows where it has become warmer', () => {
    const { total, byTemperature, byLostAir } = shortfallSince(tire(33, 40), tire(31, 70))
    expect(byTemperature).toBeLessThan(0)
    expect(byLostAir).toBeGreaterThan(total)
  })

  it('is always the sum of its parts', () => {
    fc.assert(
      fc.property(anyTire, anyTire, (set, now) => {
        const { total, byTemperature, byAltitude, byLostAir } = shortfallSince(set, now)
        expect(byTemperature + byAltitude + byLostAir).toBeCloseTo(total, 8)
      }),
      fixed,
    )
  })

  it('holds no lost air where the same air is only colder, warmer, higher or lower', () => {
    fc.assert(
      fc.property(anyTire, anyTire, (set, elsewhere) => {
        const gauge = shiftPressure({
          gauge: set.gauge,
          from: set.temperature,
          to: elsewhere.temperature,
          airBefore: set.air,
          airAfter: elsewhere.air,
        })
        expect(shortfallSince(set, { ...elsewhere, gauge }).byLostAir).toBeCloseTo(0, 8)
      }),
      fixed,
    )
  })
})
