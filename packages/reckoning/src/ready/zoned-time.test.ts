import { describe, expect, it } from 'vitest'
import { dayIn, instantOf } from './zoned-time.ts'

// Offsets and changes of America/New_York: IANA time zone database (in 2026 on March 8 and November 1 at 02:00).
const zone = 'America/New_York'

describe('a time on the shop’s clock', () => {
  it('is the same instant wherever the desk’s own clock is', () => {
    expect(instantOf('2026-01-12', '14:30', zone)).toBe('2026-01-12T19:30:00.000Z')
    expect(instantOf('2026-07-12', '14:30', zone)).toBe('2026-07-12T18:30:00.000Z')
    expect(instantOf('2026-01-12', '14:30', 'Pacific/Auckland')).toBe('2026-01-12T01:30:00.000Z')
  })

  it('is right on both days of a change, after a skipped hour and in the first of two alike', () => {
    expect(instantOf('2026-03-08', '08:00', zone)).toBe('2026-03-08T12:00:00.000Z')
    expect(instantOf('2026-03-07', '08:00', zone)).toBe('2026-03-07T13:00:00.000Z')
    expect(instantOf('2026-03-08', '02:30', zone)).toBe('2026-03-08T07:30:00.000Z')
    expect(instantOf('2026-11-01', '01:30', zone)).toBe('2026-11-01T05:30:00.000Z')
  })

  it('cannot be read from half a time', () => {
    expect(instantOf('2026-01-12', '', zone)).toBeNull()
    expect(instantOf('', '14:30', zone)).toBeNull()
  })

  it('is long ago, and breaks nothing, while a year is typed digit by digit', () => {
    for (const year of ['0000', '0002', '0020', '0202'])
      expect(Date.parse(instantOf(`${year}-12-01`, '09:30', zone) ?? '')).toBeLessThan(0)
    expect(dayIn(new Date('0020-12-01T12:00:00Z'), zone)).toBe('0020-12-01')
  })

  it('belongs to the zone’s own day', () => {
    expect(dayIn(new Date('2026-01-13T02:00:00Z'), zone)).toBe('2026-01-12')
  })
})
