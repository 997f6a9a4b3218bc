/**
 * The orders of six, eight and ten are from memory; for six the rule "across, then diagonal" was read. No standard
 * fixes any, and a sequence that the vehicle maker publishes goes before it. What every source says is that no nut is
 * drawn tight next to the one just tightened: each step goes across or at least two places on.
 */
import { hasStarSequence, starSequence } from '@bayledger/reckoning/torque/star-sequence'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const steps = [5, 6, 7, 8, 10].flatMap((studs) =>
  Array.from({ length: studs - 1 }, (_, index) => [studs, index + 1] as const),
)

published(
  { document: 'Orders of tightening, as the trade has them', certainty: 'common practice, no source' },
  () => {
    it.each([
      [6, [1, 4, 2, 5, 3, 6]],
      [8, [1, 5, 3, 7, 2, 6, 4, 8]],
      [10, [1, 6, 9, 4, 7, 2, 5, 10, 3, 8]],
    ])('of %i studs is %j', (studs, order) => {
      expect(starSequence(studs)).toEqual(order)
    })

    it.each([3, 4, 5, 6, 7, 8, 10])('there is one for %i studs', (studs) => {
      expect(hasStarSequence(studs)).toBe(true)
    })

    it.each([9, 11, 12])('there is none for %i studs, for which no source gives one', (studs) => {
      expect(hasStarSequence(studs)).toBe(false)
      expect(() => starSequence(studs)).toThrow('no source gives one')
    })

    it.each(steps)('of %i studs, step %i goes across or at least two places on', (studs, step) => {
      const order = starSequence(studs)
      const places = Math.abs((order[step] ?? 0) - (order[step - 1] ?? 0))
      expect(Math.min(places, studs - places)).toBeGreaterThanOrEqual(2)
    })
  },
)
