import { describe, expect, it } from 'vitest'
import { newtonMeters } from '../units/measured.ts'
import { isWithinDeviation, wrenchDeviation } from './deviation.ts'

describe('a wrench on the test device', () => {
  it('is off by the share of what the device shows, above zero where it gives too little', () => {
    expect(wrenchDeviation(newtonMeters(104), newtonMeters(100))).toBeCloseTo(0.04, 12)
    expect(wrenchDeviation(newtonMeters(90), newtonMeters(100))).toBeCloseTo(-0.1, 12)
  })

  it.each([
    [104, 100, 200, true],
    [96, 100, 200, true],
    [104.1, 100, 200, false],
    [95.9, 100, 200, false],
    [8.48, 8, 10, true],
    [7.52, 8, 10, true],
    [8.49, 8, 10, false],
    [8.48, 8, 10.1, false],
    [100, 0, 200, false],
    [100, -100, 200, false],
  ])('set %d and measured %d on a wrench to %d N·m: %s', (set, measured, maximum, isGood) => {
    expect(isWithinDeviation(newtonMeters(set), newtonMeters(measured), newtonMeters(maximum))).toBe(isGood)
  })
})
