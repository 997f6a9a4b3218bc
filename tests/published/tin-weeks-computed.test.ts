/**
 * Source: the rule of 49 CFR 574.5(b)(3) (week 1 is the first full calendar week; that it runs from Sunday to Saturday:
 * from memory), worked out by hand on the calendar: weeks with their Sunday, Saturday and the Monday on which the week
 * of ISO 8601 with the same number begins, which is the wrong one; the years that have a week 53; ages on a day.
 */
import { sundayOfWeek, weeksOfYear } from '@bayledger/reckoning/tire/build-week'
import { readDateCode } from '@bayledger/reckoning/tire/read-date-code'
import { tireAge } from '@bayledger/reckoning/tire/tire-age'
import { type CalendarDay, dayNumber, dayOfNumber } from '@bayledger/reckoning/units/calendar-day'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const inspectedOn = '2026-09-30' as CalendarDay
const dateOf = (code: string) => {
  const read = readDateCode(code, inspectedOn)
  if (!read.ok) throw new Error(read.allowed)
  return read.value
}
const day = (text: string) => new Date(`${text}T00:00:00Z`)

const weeks = [
  ['0109', '2009-01-04', '2009-01-10', '2008-12-29'],
  ['0308', '2008-01-20', '2008-01-26', '2008-01-14'],
  ['2620', '2020-06-28', '2020-07-04', '2020-06-22'],
  ['3214', '2014-08-10', '2014-08-16', '2014-08-04'],
  ['5219', '2019-12-29', '2020-01-04', '2019-12-23'],
  ['0124', '2024-01-07', '2024-01-13', '2024-01-01'],
  ['5323', '2023-12-31', '2024-01-06', null],
] as const
const withWeek53 = [2000, 2006, 2012, 2017, 2023, 2028, 2034, 2040]

published(
  {
    document: '49 CFR 574.5',
    section: '(b)(3), weeks on the calendar',
    certainty: 'computed from definition',
  },
  () => {
    it.each(weeks)('%s begins on Sunday %s', (code, sunday) => {
      expect(sundayOfWeek(dateOf(code))).toBe(sunday)
      expect(day(sunday).getUTCDay()).toBe(0)
    })

    it.each(weeks)('%s (from %s) ends on Saturday %s', (code, _sunday, saturday) => {
      expect(dayOfNumber(dayNumber(sundayOfWeek(dateOf(code))) + 6)).toBe(saturday)
      expect(day(saturday).getUTCDay()).toBe(6)
    })

    it.each(weeks.flatMap(([code, , , monday]) => (monday === null ? [] : [[code, monday] as const])))(
      '%s is not the ISO week that begins on %s',
      (code, monday) => {
        expect(day(monday).getUTCDay()).toBe(1)
        const apart = dayNumber(sundayOfWeek(dateOf(code))) - dayNumber(monday as CalendarDay)
        expect(apart).toBe(6)
      },
    )

    it.each(
      Array.from({ length: 41 }, (_, index) => [2000 + index, withWeek53.includes(2000 + index) ? 53 : 52]),
    )('%i has %i weeks', (year, count) => {
      expect(weeksOfYear(year)).toBe(count)
    })

    it.each(['0020', '5420', '9920', '5320', '5319', '5324'])('%s names no week that there was', (code) => {
      expect(readDateCode(code, inspectedOn)).toMatchObject({ ok: false, fault: 'no-such-week' })
    })

    it.each([
      ['2620', 2_285, 6],
      ['1015', 4_224, 11],
      ['0109', 6_478, 17],
      ['3926', 3, 0],
    ])('%s is, on 2026-09-30, %i days and %i full years old', (code, days, fullYears) => {
      expect(tireAge(dateOf(code), inspectedOn)).toEqual({ days, fullYears, atLeast: false })
    })
  },
)
