/**
 * Source: a tire maker's page on tire repair, read online in 2026: never a puncture greater than a quarter inch or 6 mm;
 * only between the outside shoulder grooves, never the sidewall, the shoulder or the outer tread; always off the wheel
 * for a complete inspection inside; never a plug alone, never a patch alone.
 */
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { find } from '../../packages/reckoning/test-support/planned.ts'
import { published } from './published.ts'
import { punctureVerdict } from './tire-verdicts.ts'

const leak = [{ kind: 'find-leak', wheel: 'LF' }] as const

published({ document: "A tire maker's page on tire repair", edition: '2026', certainty: 'read' }, () => {
  it.each([
    ['crown', 4, 'may be repaired'],
    ['shoulder', 4, 'replace'],
    ['sidewall', 1, 'replace'],
    ['crown', 8, 'replace'],
  ] as const)('in the %s, %d mm: %s', (place, millimeters, verdict) => {
    expect(punctureVerdict({ place, millimeters })).toBe(verdict)
  })

  it.each(['run-low-damage', 'cord', 'separation'] as const)(
    'a small hole in the crown of a tire that shows %s inside: replace',
    (insideTire) => {
      expect(punctureVerdict({ place: 'crown', millimeters: 2 }, { insideTire })).toBe('replace')
    },
  )

  it('a step says that the tread between the outer grooves is the only place, and that a plug alone is no repair', () => {
    const words = howOf(find('LF.leak.judge', leak))
    expect(words).toMatch(/only in the tread between the outer grooves/)
    expect(words).toMatch(/A plug from outside is no repair/)
  })
})
