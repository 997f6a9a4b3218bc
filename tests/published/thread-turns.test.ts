/**
 * Sources: two pages on wheel nuts with the least turns of engagement by thread, read online in 2026 (speedyauto.cc,
 * adaptitusa.com/wheellugnuttorquing.aspx). The vehicle maker's figure governs.
 */
import { threadEngagement } from '@bayledger/reckoning/wheel/thread-engagement'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: 'Two pages on wheel nuts', section: 'turns of engagement', edition: '2026', certainty: 'read' },
  () => {
    it.each([
      ['M12×1.5', 6.5],
      ['M12×1.25', 8],
      ['M14×1.5', 7.5],
      ['1/2-20', 8],
      ['9/16-18', 8],
    ])('%s holds from %f turns', (thread, turns) => {
      expect(threadEngagement(thread, turns - 0.1, null)).toMatchObject({ outcome: 'short-of-trade' })
      expect(threadEngagement(thread, turns, null)).toMatchObject({
        outcome: 'under-one-diameter',
        leastTurns: turns,
      })
    })
  },
)
