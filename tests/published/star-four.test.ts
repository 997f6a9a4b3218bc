/**
 * Source: the words of a parts retailer's video on wheels, read online in 2026: four nuts are tightened at "opposite
 * corners". 1-3-2-4 and 1-3-4-2 both do.
 */
import { readSequence } from '@bayledger/reckoning/torque/read-sequence'
import { degreesApart } from '@bayledger/reckoning/torque/sequence-rule'
import { starSequence } from '@bayledger/reckoning/torque/star-sequence'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: "A parts retailer's video on wheels", section: 'four studs', certainty: 'read' },
  () => {
    it.each([
      [0, 1],
      [2, 3],
    ])('our places %i and %i in the order lie at opposite corners', (one, other) => {
      const order = starSequence(4)
      expect(degreesApart(order[one] ?? 0, order[other] ?? 0, 4)).toBe(180)
    })

    it.each(['1-3-2-4', '1-3-4-2'])('%s is taken from a maker’s page', (typed) => {
      expect(readSequence(typed, 4)).toMatchObject({ ok: true })
    })

    it('1-2-3-4 goes round the wheel and is not', () => {
      expect(readSequence('1-2-3-4', 4)).toMatchObject({ ok: false, fault: 'too-near' })
    })
  },
)
