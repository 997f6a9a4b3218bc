/**
 * Source: a tire dealer's page that repeats the tire manufacturers' association's guidelines for puncture repair of
 * passenger and light-truck tires, read online in 2026: the tread area only; the injury not greater than 1/4 inch (6 mm);
 * the tire off the wheel and inspected inside before a repair is tried; a plug that fills the hole and a patch; never
 * from outside or on the wheel.
 */
import { workLimits } from '@bayledger/reckoning/job-plan/work-limits'
import { expect, it } from 'vitest'
import { howOf } from '../../packages/reckoning/test-support/in-words.ts'
import { find, steps } from '../../packages/reckoning/test-support/planned.ts'
import { published } from './published.ts'
import { punctureVerdict } from './tire-verdicts.ts'

const leak = [
  { kind: 'find-leak', wheel: 'LF' },
  { kind: 'repair-puncture', wheel: 'LF' },
] as const
const placeOf = (key: string): number => steps(leak).findIndex(({ stepKey }) => stepKey === `LF.${key}`)

published(
  {
    document: "A tire dealer's page on the association's puncture repair procedures",
    edition: '2026',
    certainty: 'read',
  },
  () => {
    it.each([
      [1, 'may be repaired'],
      [3, 'may be repaired'],
      [6, 'may be repaired'],
      [6.1, 'replace'],
      [6.5, 'replace'],
      [7, 'replace'],
      [20, 'replace'],
    ])('a hole of %d mm in the tread area: %s', (millimeters, verdict) => {
      expect(punctureVerdict({ place: 'crown', millimeters })).toBe(verdict)
    })

    it.each(['shoulder', 'sidewall'] as const)('a hole of 2 mm in the %s: replace', (place) => {
      expect(punctureVerdict({ place, millimeters: 2 })).toBe('replace')
    })

    it('the limit that a step names is 1/4 inch, 6 mm', () => {
      expect(workLimits.largestHole).toEqual({ inches: '1/4', millimeters: 6 })
      expect(howOf(find('LF.leak.judge', leak))).toContain('1/4 in (6 mm)')
    })

    it.each([
      ['wheel.off', 'tire.open'],
      ['tire.open', 'tire.inside'],
      ['tire.inside', 'leak.judge'],
      ['leak.judge', 'leak.repair'],
    ])('%s comes before %s', (first, then) => {
      expect(placeOf(first)).toBeGreaterThanOrEqual(0)
      expect(placeOf(first)).toBeLessThan(placeOf(then))
    })

    it('the repair is a plug and a patch', () => {
      expect(howOf(find('LF.leak.repair', leak))).toMatch(/plug and patch/)
    })
  },
)
