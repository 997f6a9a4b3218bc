import { describe, expect, it } from 'vitest'
import { bandOf, isSameFrequency } from './frequency.ts'

describe('a frequency', () => {
  it.each([
    [314, '315 MHz'],
    [316, '315 MHz'],
    [432.92, '433.92 MHz'],
    [434.92, '433.92 MHz'],
    [2_400, '2.4 GHz'],
    [2_483.5, '2.4 GHz'],
  ])('of %d MHz is in the band %s', (megahertz, words) => {
    expect(bandOf(megahertz)?.words).toBe(words)
  })

  it.each([313.99, 316.01, 390, 432.91, 434.93, 868, 2_399.9, 2_483.6])(
    'of %d MHz is not in the list',
    (megahertz) => {
      expect(bandOf(megahertz)).toBeNull()
    },
  )

  it.each([
    [433.92, 434.92],
    [432.92, 433.92],
    [390, 391],
    [2_402, 2_480],
    [2_400, 2_483.5],
  ])('is the same where %d and %d are near or both in the high band', (one, other) => {
    expect([isSameFrequency(one, other), isSameFrequency(other, one)]).toEqual([true, true])
  })

  it.each([
    [315, 433.92],
    [433.92, 434.93],
    [314, 315.01],
    [433.92, 2_400],
    [2_400, 2_398.9],
  ])('is another one where %d and %d are further apart', (one, other) => {
    expect([isSameFrequency(one, other), isSameFrequency(other, one)]).toEqual([false, false])
  })
})
