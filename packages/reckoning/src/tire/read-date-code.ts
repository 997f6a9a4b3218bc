import { type Reading, type Refusal, refused, taken } from '../reading.ts'
import type { CalendarDay } from '../units/calendar-day.ts'
import { dateCodeWords } from '../words/typed-tire.ts'
import { type BuildWeek, sundayOfWeek, weeksOfYear } from './build-week.ts'

export type DateCodeFault = 'not-a-date-code' | 'no-such-week' | 'in-the-future'

/**
 * When a tire was made. A code of three digits names no decade: `decadeKnown` is then false, and the week is the
 * latest that it can mean.
 */
export type BuildDate = BuildWeek & { readonly decadeKnown: boolean }

/**
 * Reads only the date code, as a technician types it off the end of a tire identification number: week and year in
 * four digits ("2620": week 26 of 2020) or, on tires made before July 2000, week and last digit of the year in three
 * ("317": week 31 of 1997, or ten or twenty years before).
 *
 * @formula four digits: year 2000 + YY. Three digits: the latest year before 2000 that ends in that digit and has that
 * week; 2000 itself for weeks 1 to 26, which end with 1 July
 * @units weeks as `sundayOfWeek` counts them; the day of the inspection as YYYY-MM-DD
 * @limits weeks 1 to 52, and 53 only in a year that has one; none that begins after the day of the inspection
 * @source 49 CFR 574.5(b)(3) (quoted); four digits instead of three: 64 FR 36807 of 8 July 1999 (read), from 2 July
 * 2000 on (the month quoted in owner handbooks, the day from memory)
 */
export const readDateCode = (typed: string, inspectedOn: CalendarDay): Reading<BuildDate, DateCodeFault> => {
  const digits = typed.trim()
  if (/^\d{4}$/.test(digits))
    return fourDigits(typed, Number(digits.slice(0, 2)), 2000 + Number(digits.slice(2)), inspectedOn)
  if (/^\d{3}$/.test(digits))
    return threeDigits(typed, Number(digits.slice(0, 2)), Number(digits.slice(2)), inspectedOn)
  return refused('not-a-date-code', typed, dateCodeWords.notADateCode)
}

const fourDigits = (
  typed: string,
  week: number,
  year: number,
  inspectedOn: CalendarDay,
): Reading<BuildDate, DateCodeFault> => {
  if (week < 1 || week > weeksOfYear(year))
    return noSuchWeek(typed, week, dateCodeWords.weeksOfYear(year, weeksOfYear(year)))
  return notAfter(typed, { year, week, decadeKnown: true }, inspectedOn)
}

const threeDigits = (
  typed: string,
  week: number,
  yearDigit: number,
  inspectedOn: CalendarDay,
): Reading<BuildDate, DateCodeFault> => {
  const year = [2000, 1990, 1980, 1970]
    .map((decade) => decade + yearDigit)
    .find((one) => (one < 2000 || (one === 2000 && week < firstFourDigitWeek)) && week <= weeksOfYear(one))
  if (week < 1 || year === undefined)
    return noSuchWeek(typed, week, week === 53 ? dateCodeWords.week53 : dateCodeWords.weeks)
  return notAfter(typed, { year, week, decadeKnown: false }, inspectedOn)
}

/** Week 27 of 2000 begins on 2 July, the day from which four digits were required. */
const firstFourDigitWeek = 27

const noSuchWeek = (typed: string, week: number, allowed: string): Refusal<'no-such-week'> =>
  refused('no-such-week', `${typed}: ${dateCodeWords.week(week)}`, { allowed, do: dateCodeWords.weekFirst })

const notAfter = (
  typed: string,
  date: BuildDate,
  inspectedOn: CalendarDay,
): Reading<BuildDate, DateCodeFault> =>
  sundayOfWeek(date) <= inspectedOn
    ? taken(date)
    : refused(
        'in-the-future',
        `${typed}: ${dateCodeWords.begins(date.week, date.year, sundayOfWeek(date))}`,
        dateCodeWords.inTheFuture(inspectedOn),
      )
