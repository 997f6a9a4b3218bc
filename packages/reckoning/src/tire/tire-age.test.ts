import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayNumber, dayOfNumber, readCalendarDay } from '../units/calendar-day.ts'
import { sundayOfWeek, weeksOfYear } from './build-week.ts'
import { tireAge } from './tire-age.ts'

const dayOf = (text: string) => {
  const read = readCalendarDay(text)
  if (!read.ok) throw new Error(read.do)
  return read.value
}

describe('the age of a tire', () => {
  const made = { week: 26, year: 2020, decadeKnown: true }
  it.each([
    ['2020-06-28', 0, 0],
    ['2020-06-29', 1, 0],
    ['2021-06-27', 364, 0],
    ['2021-06-28', 365, 1],
    ['2026-06-27', 2_190, 5],
    ['2026-06-28', 2_191, 6],
  ])('made in week 26 of 2020 is, on %s, %i days and %i full years', (day, days, fullYears) => {
    expect(tireAge(made, dayOf(day))).toEqual({ days, fullYears, atLeast: false })
  })

  it('is at least so much where the decade is not known', () => {
    expect(tireAge({ week: 31, year: 1997, decadeKnown: false }, dayOf('2026-09-30'))).toMatchObject({
      fullYears: 29,
      atLeast: true,
    })
  })

  it('never falls as the days go by, and its years fit its days', () => {
    const weeks = fc
      .integer({ min: 1971, max: 2060 })
      .chain((year) => fc.integer({ min: 1, max: weeksOfYear(year) }).map((week) => ({ year, week })))
    fc.assert(
      fc.property(weeks, fc.nat(20_000), fc.nat(800), (week, after, further) => {
        const built = { ...week, decadeKnown: true }
        const sunday = dayNumber(sundayOfWeek(week))
        const [sooner, later] = [after, after + further].map((days) =>
          tireAge(built, dayOfNumber(sunday + days)),
        )
        expect(sooner?.days).toBe(after)
        expect((later?.days ?? 0) - (sooner?.days ?? 0)).toBe(further)
        expect(later?.fullYears).toBeGreaterThanOrEqual(sooner?.fullYears ?? 0)
        expect(Math.abs((sooner?.fullYears ?? 0) - Math.floor(after / 365.25))).toBeLessThanOrEqual(1)
      }),
      { seed: 20260112, numRuns: 2_000 },
    )
  })
})
