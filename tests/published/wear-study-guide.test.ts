/**
 * Source: a study guide for a mechanic's examination, its page on tire wear problems, read online in 2026
 * (freeasestudyguides.com/tire-wear-problems.html): worn in the center and not on the shoulders is overinflated; an
 * underinflated tire wears on its outer edges; camber wears one side.
 */
import { wearHint } from '@bayledger/reckoning/tire/wear-hints'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: 'A study guide on tire wear', section: 'wear patterns', edition: '2026', certainty: 'read' },
  () => {
    it('worn in the center and not on the shoulders: too much pressure', () => {
      expect(wearHint({ inner: 8, middle: 4, outer: 8 })).toBe('middle')
    })

    it('worn on the outer edges: too little pressure', () => {
      expect(wearHint({ inner: 4, middle: 8, outer: 4 })).toBe('both-shoulders')
    })

    it.each([
      [8, 4, 'outer-shoulder'],
      [4, 8, 'inner-shoulder'],
    ])('%i inside and %i outside: a camber that wears the %s', (inner, outer, hint) => {
      expect(wearHint({ inner, middle: 6, outer })).toBe(hint)
    })
  },
)
