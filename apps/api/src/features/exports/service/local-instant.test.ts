import { describe, expect, it } from 'vitest'
import { localInstant } from './local-instant.ts'

/** Summer time in New York 2026 (15 U.S.C. 260a): from March 8, 2 AM, to November 1, 2 AM. */
describe('an instant by a place’s clock', () => {
  it.each([
    ['2026-03-08T06:59:59.999Z', '2026-03-08T01:59:59-05:00'],
    ['2026-03-08T07:00:00.000Z', '2026-03-08T03:00:00-04:00'],
    ['2026-11-01T05:30:00.000Z', '2026-11-01T01:30:00-04:00'],
    ['2026-11-01T06:30:00.000Z', '2026-11-01T01:30:00-05:00'],
  ])('%s is %s', (instant, local) => {
    expect(localInstant(instant, 'America/New_York')).toBe(local)
  })

  it('is UTC where the place has it', () => {
    expect(localInstant('2026-01-12T00:00:00.000Z', 'UTC')).toBe('2026-01-12T00:00:00+00:00')
  })
})
