import { describe, expect, it } from 'vitest'
import { suggestedMinimum } from './suggested-minimum.ts'

describe('the suggested minimum', () => {
  // Common practice, no source: the factor of the first freeze week.
  it.each([
    [30, 90, 3, 3],
    [14, 90, 4, 2],
    [1, 90, 1, 1],
    [0, 90, 10, 0],
    [-2, 90, 10, 0],
    [90, 90, 0, 0],
  ])('of %i drawn in %i days and %i days of delivery is %i', (drawn, inDays, leadDays, minimum) => {
    expect(suggestedMinimum({ drawn, inDays, leadDays })).toBe(minimum)
  })
})
