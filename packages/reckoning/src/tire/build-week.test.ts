import * as fc from 'fast-check'
import { expect, it } from 'vitest'
import { sundayOfWeek, weeksOfYear } from './build-week.ts'

const weeks = fc
  .integer({ min: 1971, max: 2099 })
  .chain((year) => fc.integer({ min: 1, max: weeksOfYear(year) }).map((week) => ({ year, week })))

it("a week's Sunday is always a Sunday, in the week's own year", () => {
  fc.assert(
    fc.property(weeks, (week) => {
      const sunday = sundayOfWeek(week)
      expect(new Date(`${sunday}T00:00:00Z`).getUTCDay()).toBe(0)
      expect(sunday.slice(0, 4)).toBe(String(week.year))
    }),
    { seed: 20260112, numRuns: 3_000 },
  )
})

it('every year has 52 or 53 weeks, first to last within it', () => {
  for (let year = 1971; year <= 2099; year += 1) {
    const count = weeksOfYear(year)
    expect([52, 53]).toContain(count)
    expect(Number(sundayOfWeek({ year, week: 1 }).slice(5).replace('-', ''))).toBeLessThanOrEqual(107)
    expect(Number(sundayOfWeek({ year, week: count }).slice(5).replace('-', ''))).toBeGreaterThanOrEqual(1225)
  }
})

it('a week begins seven days after the one before, over the end of a year too', () => {
  const day = (text: string) => Date.parse(`${text}T00:00:00Z`) / 86_400_000
  for (const year of [2000, 2009, 2019, 2023]) {
    const all = Array.from({ length: weeksOfYear(year) }, (_, index) =>
      sundayOfWeek({ year, week: index + 1 }),
    )
    const following = [...all.slice(1), sundayOfWeek({ year: year + 1, week: 1 })]
    expect(following.map((sunday, index) => day(sunday) - day(all[index] ?? ''))).toEqual(all.map(() => 7))
  }
})
