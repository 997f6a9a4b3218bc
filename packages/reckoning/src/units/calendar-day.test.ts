import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type CalendarDay,
  dayNumber,
  dayOfNumber,
  fullYearsBetween,
  readCalendarDay,
  sundayOnOrBefore,
} from './calendar-day.ts'

const day = (text: string) => text as CalendarDay

describe('a day', () => {
  it('has the number that the platform gives it, from 1800 to 2200, and comes back from it', () => {
    for (let number = -62_091; number <= 84_000; number += 1) {
      const text = new Date(number * 86_400_000).toISOString().slice(0, 10)
      if (dayOfNumber(number) !== text || dayNumber(day(text)) !== number)
        expect([dayOfNumber(number), dayNumber(day(text))]).toEqual([text, number])
    }
    expect(dayOfNumber(0)).toBe('1970-01-01')
  })

  it('has its Sunday on it or before it, by less than a week', () => {
    for (let number = -30_000; number <= 60_000; number += 1) {
      const sunday = sundayOnOrBefore(number)
      if (new Date(sunday * 86_400_000).getUTCDay() !== 0 || number - sunday < 0 || number - sunday > 6)
        expect.fail(`day ${number} has the Sunday ${sunday}`)
    }
    expect(sundayOnOrBefore(3)).toBe(3)
  })

  it.each([
    ['2020-06-28', '2026-06-28', 6],
    ['2020-06-28', '2026-06-27', 5],
    ['2020-06-28', '2026-12-01', 6],
    ['2020-12-31', '2021-01-01', 0],
    ['2020-02-29', '2021-02-28', 0],
    ['2020-02-29', '2021-03-01', 1],
  ])('from %s to %s are %i full years', (from, to, years) => {
    expect(fullYearsBetween(day(from), day(to))).toBe(years)
  })

  it.each(['2026-09-30', ' 2024-02-29 ', '1900-01-01', '2199-12-31', '2000-02-29'])(
    '"%s" is taken',
    (typed) => {
      expect(readCalendarDay(typed)).toEqual({ ok: true, value: typed.trim() })
    },
  )

  it.each([
    ['', 'not-a-day', '2026-01-12'],
    ['9/30/2026', 'not-a-day', '2026-01-12'],
    ['2026-9-30', 'not-a-day', '2026-01-12'],
    ['on 2026-09-30', 'not-a-day', '2026-01-12'],
    ['2026-09-300', 'not-a-day', '2026-01-12'],
    ['2025-02-29', 'no-such-day', 'calendar'],
    ['1900-02-29', 'no-such-day', 'calendar'],
    ['2026-09-31', 'no-such-day', 'calendar'],
    ['2026-13-01', 'no-such-day', 'calendar'],
    ['2026-00-01', 'no-such-day', 'calendar'],
    ['2026-01-00', 'no-such-day', 'calendar'],
    ['1899-12-31', 'no-such-day', '1900-01-01'],
    ['2200-01-01', 'no-such-day', '2199-12-31'],
  ])('"%s" is refused: %s', (typed, fault, allowed) => {
    const read = readCalendarDay(typed)
    expect(read).toMatchObject({ ok: false, fault, found: typed })
    if (read.ok) return
    expect(read.allowed).toContain(allowed)
    expect(read.do).toMatch(/\.$/)
  })

  it('is taken as typed or refused: nothing is thrown or guessed in 10,000 texts', () => {
    let taken = 0
    const nearly = fc.stringMatching(/^(19|20|21)\d\d-[01]\d-[0-3]\d$/)
    fc.assert(
      fc.property(fc.oneof(fc.string(), nearly), (typed) => {
        const read = readCalendarDay(typed)
        if (!read.ok) return
        taken += 1
        expect(read.value).toBe(typed.trim())
        expect(new Date(`${read.value}T00:00:00Z`).toISOString().slice(0, 10)).toBe(read.value)
      }),
      { seed: 20260112, numRuns: 10_000 },
    )
    expect(taken).toBeGreaterThan(500)
  })
})
