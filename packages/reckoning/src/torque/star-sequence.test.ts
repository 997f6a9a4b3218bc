import { describe, expect, it } from 'vitest'
import { degreesApart, hasStarSequence, starSequence } from './star-sequence.ts'

const counts = [3, 4, 5, 6, 7, 8, 10]

describe('a star sequence', () => {
  it.each(counts)('of %i names each fastener once', (studs) => {
    expect([...starSequence(studs)].sort((a, b) => a - b)).toEqual(
      Array.from({ length: studs }, (_, i) => i + 1),
    )
  })

  // Common practice, no source: never to a neighbor, so that the wheel is drawn flat against its hub.
  it.each(counts)('of %i goes across: consecutive ones lie far apart', (studs) => {
    const least = studs === 3 || studs === 5 ? 120 : 90
    const sequence = starSequence(studs)
    const apart = sequence.slice(1).map((stud, i) => degreesApart(stud, sequence[i] ?? 0, studs))
    expect(Math.min(...apart)).toBeGreaterThanOrEqual(least)
  })

  it('does not exist for a count that no wheel has', () => {
    expect(hasStarSequence(9)).toBe(false)
    expect(() => starSequence(9)).toThrow(RangeError)
  })
})
