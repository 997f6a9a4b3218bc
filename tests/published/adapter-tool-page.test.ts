/**
 * Source: a torque tool dealer's page on extensions, read online in 2026 (torqwrench.com/Info/extens.php): 12 in with
 * 6 in, 30 wanted, 20 on the scale.
 */
import { expect, it } from 'vitest'
import { inches, readingFor, torqueAt } from './adapter-lengths.ts'
import { published } from './published.ts'

published(
  { document: "A torque tool dealer's page on extensions", edition: '2026', certainty: 'read' },
  () => {
    it('30 is applied at 20 on the scale', () => {
      expect(readingFor(30, inches(12, 6))).toBeCloseTo(20, 9)
    })

    it('20 on the scale applies 30', () => {
      expect(torqueAt(20, inches(12, 6))).toBeCloseTo(30, 9)
    })
  },
)
