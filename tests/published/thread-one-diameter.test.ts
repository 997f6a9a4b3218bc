/**
 * Source: a wheel seller's page on lug nuts, read online in 2026 (performanceplustire.com, a few facts about lug nuts): at least
 * the diameter of the stud is to be held, as its engineers' society recommends; 1/2 in of thread on a 1/2 in stud.
 */
import { threadEngagement } from '@bayledger/reckoning/wheel/thread-engagement'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: 'A wheel seller’s page on lug nuts', section: 'thread engagement', certainty: 'read' },
  () => {
    it.each([
      ['1/2-20', 10],
      ['M12×1.5', 8],
      ['M14×2', 7],
      ['M12×1.75', 12 / 1.75],
    ])('%s: one diameter is %f turns, and less is doubted', (thread, turns) => {
      expect(threadEngagement(thread, turns, null)).toMatchObject({ outcome: 'enough' })
      const less = threadEngagement(thread, turns - 0.1, null)
      expect(less.outcome).not.toBe('enough')
    })
  },
)
