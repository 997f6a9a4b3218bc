import { describe, expect, it } from 'vitest'
import { quietUntil } from './quiet-hours.ts'

const night = '21:00-08:00'
const zone = 'America/Chicago'
const until = (at: string, hours = night) => quietUntil(new Date(at), zone, hours)?.toISOString() ?? null

describe('the quiet hours', () => {
  it.each([
    ['the evening before they begin', '2026-01-13T02:59:59.000Z', null],
    ['the evening', '2026-01-13T03:00:00.000Z', '2026-01-13T14:00:00.000Z'],
    ['the night', '2026-01-13T09:30:30.000Z', '2026-01-13T14:00:00.000Z'],
    ['the last minute', '2026-01-13T13:59:59.000Z', '2026-01-13T14:00:00.000Z'],
    ['the morning', '2026-01-13T14:00:00.000Z', null],
  ])('in %s', (_, at, end) => {
    expect(until(at)).toBe(end)
  })

  it('end at the hour of the place on nights when the clock changes', () => {
    // Daylight saving time of 2026 in the United States: March 8 to November 1 (15 U.S.C. 260a).
    expect(until('2026-03-08T04:00:00.000Z')).toBe('2026-03-08T13:00:00.000Z')
    expect(until('2026-11-01T03:00:00.000Z')).toBe('2026-11-01T14:00:00.000Z')
  })

  it('may lie within a day, and may be none', () => {
    expect(until('2026-01-13T18:30:00.000Z', '12:00-13:00')).toBe('2026-01-13T19:00:00.000Z')
    expect(quietUntil(new Date('2026-01-13T09:00:00.000Z'), zone, null)).toBeNull()
  })
})
