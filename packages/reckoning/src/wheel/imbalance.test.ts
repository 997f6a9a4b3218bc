import { describe, expect, it } from 'vitest'
import { millimeters } from '../units/measured.ts'
import { gramsFromOunces, imbalance } from './imbalance.ts'

const of = {
  grams: { inner: 10, outer: 0 },
  rimInches: 16,
  tireDiameter: millimeters(632),
  milesPerHour: 60,
  on: 'car',
} as const

describe('what is left after balancing', () => {
  it('is judged by the heavier side', () => {
    expect(imbalance(of)).toMatchObject({ grams: 10, isOver: false })
    expect(imbalance({ ...of, grams: { inner: 4, outer: 10.1 } })).toMatchObject({
      grams: 10.1,
      isOver: true,
    })
    expect(imbalance({ ...of, grams: { inner: 9, outer: 9 } }).isOver).toBe(false)
    expect(imbalance({ ...of, on: 'fast-car' }).isOver).toBe(true)
    expect(imbalance({ ...of, grams: { inner: 30, outer: 0 }, on: 'light-truck' }).isOver).toBe(false)
  })

  it('pulls with both sides, by the rim and by the square of the speed', () => {
    // 60 mph is 26.8224 m/s; on a radius of 0.316 m that is 84.881 rad/s; 0.02 kg at 0.2032 m.
    const { force, hertz } = imbalance({ ...of, grams: { inner: 10, outer: 10 } })
    expect(force).toBeCloseTo(29.28, 2)
    expect(hertz).toBeCloseTo(13.509, 3)
    expect(imbalance({ ...of, grams: { inner: 10, outer: 10 }, milesPerHour: 30 }).force).toBeCloseTo(7.32, 2)
  })

  it('is a quarter of an ounce at 7.1 g', () => {
    expect(gramsFromOunces(0.25)).toBeCloseTo(7.0874, 4)
  })
})
