import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gaugeKilopascals, kelvins, kilopascalsApart, meters } from '../units/measured.ts'
import { daysToWarning, type GaugedTire, isLeak, lossBetween, lossUncertainty } from './air-loss.ts'
import { airAtSeaLevel, airPressureAtAltitude } from './air-pressure.ts'
import { shiftPressure } from './shift-pressure.ts'

const reference = kelvins(293.15)
const gauged = (gauge: number, temperature: number = reference, air: number = airAtSeaLevel): GaugedTire => ({
  gauge: gaugeKilopascals(gauge),
  temperature: kelvins(temperature),
  air: air as GaugedTire['air'],
})
const anyTire = fc
  .record({
    gauge: fc.double({ min: 50, max: 700, noNaN: true }),
    temperature: fc.double({ min: 240, max: 340, noNaN: true }),
    altitude: fc.double({ min: -100, max: 4_000, noNaN: true }),
  })
  .map(({ gauge, temperature, altitude }) =>
    gauged(gauge, temperature, airPressureAtAltitude(meters(altitude))),
  )
const fixed = { seed: 20260112, numRuns: 500 }

describe('a loss between two readings', () => {
  it('is the difference of the gauge values where nothing else changed', () => {
    expect(lossBetween(gauged(240), gauged(220), 10)).toEqual({ drop: 20, days: 10, perDay: 2 })
  })

  it('is negative where air was added', () => {
    expect(lossBetween(gauged(220), gauged(240), 4)).toMatchObject({ drop: -20, perDay: -5 })
  })

  it('is of the air and not of the weather', () => {
    fc.assert(
      fc.property(anyTire, anyTire, (earlier, elsewhere) => {
        const same = shiftPressure({
          gauge: earlier.gauge,
          from: earlier.temperature,
          to: elsewhere.temperature,
          airBefore: earlier.air,
          airAfter: elsewhere.air,
        })
        expect(lossBetween(earlier, { ...elsewhere, gauge: same }, 30)?.drop).toBeCloseTo(0, 8)
      }),
      fixed,
    )
  })

  it('is brought to 68 °F, so a loss in the cold counts for more', () => {
    const drop = lossBetween(gauged(240, 263.15), gauged(220, 263.15), 1)?.drop ?? 0
    expect(drop).toBeCloseTo((20 * 293.15) / 263.15, 9)
  })

  it.each([0, -1, Number.NaN])('is not to be had when %d days passed', (days) => {
    expect(lossBetween(gauged(240), gauged(220), days)).toBeNull()
  })
})

describe('the uncertainty of a loss', () => {
  const errors = { gauge: kilopascalsApart(6.9), temperature: 2.8 }

  it('adds the errors of both readings by their squares', () => {
    const perKelvin = (240 + 101.325) / 293.15
    expect(lossUncertainty(gauged(240), errors)).toBeCloseTo(
      Math.sqrt(6.9 ** 2 + 6.9 ** 2 + (perKelvin * 2.8) ** 2 + (perKelvin * 2.8) ** 2),
      10,
    )
  })

  it('is that of two gauges alone where temperatures are known', () => {
    expect(lossUncertainty(gauged(240), { ...errors, temperature: 0 })).toBeCloseTo(6.9 * Math.SQRT2, 10)
  })

  it('is never negative, and grows with either error', () => {
    const error = fc.double({ min: -20, max: 20, noNaN: true })
    fc.assert(
      fc.property(anyTire, error, error, (tire, gauge, temperature) => {
        const of = (one: number, other: number) =>
          lossUncertainty(tire, { gauge: kilopascalsApart(one), temperature: other })
        expect(of(gauge, temperature)).toBeGreaterThanOrEqual(0)
        expect(of(2 * gauge, temperature)).toBeGreaterThanOrEqual(of(gauge, temperature))
        expect(of(gauge, 2 * temperature)).toBeGreaterThanOrEqual(of(gauge, temperature))
      }),
      fixed,
    )
  })

  it.each([
    [10.9, false],
    [11, false],
    [11.034, false],
    [11.04, true],
    [12, true],
  ])('of 11 kPa makes a drop of %d kPa a leak: %s', (drop, leak) => {
    const loss = { drop: kilopascalsApart(drop), days: 5, perDay: kilopascalsApart(drop / 5) }
    expect(isLeak(loss, kilopascalsApart(11))).toBe(leak)
  })
})

describe('the days until the light comes on', () => {
  const days = (cold: number, perDay: number) =>
    daysToWarning(gaugeKilopascals(cold), gaugeKilopascals(180), kilopascalsApart(perDay))

  it.each([
    [240, 6, 10],
    [240, 7, 8],
    [181, 6, 1],
    [180.1, 50, 1],
  ])('of a tire at %d kPa that loses %d a day are %d', (cold, perDay, expected) => {
    expect(days(cold, perDay)).toBe(expected)
  })

  it.each([
    ['has reached its warning point', 180, 5],
    ['is under it', 170, 5],
    ['loses nothing', 240, 0],
    ['was filled', 240, -3],
  ])('are not counted for a tire that %s', (_, cold, perDay) => {
    expect(days(cold, perDay)).toBeNull()
  })
})
