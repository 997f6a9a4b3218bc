import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { degreesApart, leastDegreesApart, sequenceDoubt } from './sequence-rule.ts'

describe('the angle between two fasteners', () => {
  it.each([
    [1, 2, 3, 120],
    [1, 3, 4, 180],
    [1, 4, 4, 90],
    [1, 3, 5, 144],
    [5, 1, 5, 72],
    [2, 5, 6, 180],
    [1, 10, 10, 36],
    [7, 7, 8, 0],
  ])('%i and %i of %i is %d degrees, the short way round', (one, other, studs, degrees) => {
    expect(degreesApart(one, other, studs)).toBeCloseTo(degrees, 9)
    expect(degreesApart(other, one, studs)).toBeCloseTo(degrees, 9)
  })
})

describe('an order of tightening', () => {
  it.each([
    [3, 120],
    [5, 120],
    [6, 120],
    [7, 90],
    [8, 90],
    [10, 90],
  ])('of %i goes at least %i degrees round at each step', (studs, degrees) => {
    expect(leastDegreesApart(studs, 1)).toBe(degrees)
    expect(leastDegreesApart(studs, 2)).toBe(degrees)
  })

  it('of four goes across, to a neighbor of that, and across again', () => {
    expect([1, 2, 3].map((step) => leastDegreesApart(4, step))).toEqual([180, 90, 180])
  })

  it.each([
    ['leaves one out', [1, 3, 5, 2], 5, 'wrong-count', [1, 3, 5, 2]],
    ['has none', [], 5, 'wrong-count', []],
    ['names a sixth of five', [1, 3, 5, 2, 6], 5, 'no-such-fastener', [6]],
    ['names a zeroth', [0, 2, 4, 1, 3], 5, 'no-such-fastener', [0]],
    ['names half a fastener', [1.5, 3, 5, 2, 4], 5, 'no-such-fastener', [1.5]],
    ['names one twice', [1, 3, 5, 3, 4], 5, 'named-twice', [3]],
    ['of four goes round the wheel', [1, 2, 3, 4], 4, 'too-near', [1, 2]],
    ['of four goes across too late', [1, 4, 2, 3], 4, 'too-near', [1, 4]],
    ['goes round the wheel', [1, 2, 3, 4, 5], 5, 'too-near', [1, 2]],
    ['ends at a neighbor', [1, 3, 5, 4, 2], 5, 'too-near', [5, 4]],
    ['of six goes 60 degrees', [1, 4, 5, 2, 3, 6], 6, 'too-near', [4, 5]],
    ['of eight goes 45 degrees', [1, 5, 4, 8, 3, 7, 2, 6], 8, 'too-near', [5, 4]],
  ] as const)('that %s is wrong there', (_, order, studs, fault, at) => {
    expect(sequenceDoubt(order, studs)).toEqual({ fault, at })
  })

  it('is as right when read backward or mirrored', () => {
    const studs = fc.constantFrom(3, 4, 5, 6, 7, 8, 10)
    const orders = studs.chain((count) =>
      fc.tuple(
        fc.constant(count),
        fc.shuffledSubarray(
          Array.from({ length: count }, (_, index) => index + 1),
          { minLength: count },
        ),
      ),
    )
    fc.assert(
      fc.property(orders, ([count, order]) => {
        const isRight = sequenceDoubt(order, count) === null
        expect(sequenceDoubt(order.toReversed(), count) === null).toBe(isRight)
        expect(
          sequenceDoubt(
            order.map((stud) => count + 1 - stud),
            count,
          ) === null,
        ).toBe(isRight)
      }),
      { seed: 20260112, numRuns: 2_000 },
    )
  })
})
