/**
 * Sources: the orders of four and five were read in print (a parts retailer's video text, "opposite corners"; a
 * maker's wheel sheet, 1-3-5-2-4); those of six, eight and ten are from memory. No standard fixes any: common
 * practice, and a sequence that the vehicle maker publishes goes before it. What every source says is that no wheel
 * is drawn tight next to a fastener just tightened.
 */
import { hasStarSequence, starSequence } from '@bayledger/reckoning/torque/star-sequence'
import { describe, expect, it } from 'vitest'

describe('the order of tightening', () => {
  it.each([
    [4, [1, 3, 2, 4]],
    [5, [1, 3, 5, 2, 4]],
    [6, [1, 4, 2, 5, 3, 6]],
    [8, [1, 5, 3, 7, 2, 6, 4, 8]],
    [10, [1, 6, 9, 4, 7, 2, 5, 10, 3, 8]],
  ])('of %d is as printed', (studs, printed) => {
    expect(starSequence(studs)).toEqual(printed)
  })

  it('never goes from one fastener to its neighbor where there are five or more', () => {
    for (let studs = 5; studs <= 10; studs += 1) {
      if (!hasStarSequence(studs)) continue
      const sequence = starSequence(studs)
      for (const [index, stud] of sequence.slice(1).entries()) {
        const steps = Math.abs(stud - (sequence[index] ?? 0))
        expect(Math.min(steps, studs - steps)).toBeGreaterThanOrEqual(2)
      }
    }
  })
})
