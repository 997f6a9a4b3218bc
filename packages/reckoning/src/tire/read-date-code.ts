import { type Reading, type Refusal, refused, taken } from '../reading.ts'
import type { CalendarDay } from '../units/calendar-day.ts'
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
  return refused('not-a-date-code', {
    found: typed,
    allowed: 'four digits, week and year, as 2620; three on a tire made before July 2000',
    do: 'Read the last group of the number that begins with DOT. Where it has no date, look on the other sidewall.',
  })
}

const fourDigits = (
  typed: string,
  week: number,
  year: number,
  inspectedOn: CalendarDay,
): Reading<BuildDate, DateCodeFault> => {
  if (week < 1 || week > weeksOfYear(year))
    return noSuchWeek(typed, week, `${year} has weeks 01 to ${weeksOfYear(year)}`)
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
    return noSuchWeek(typed, week, week === 53 ? 'a week 53 only in a year that has one' : 'weeks 01 to 53')
  return notAfter(typed, { year, week, decadeKnown: false }, inspectedOn)
}

/** Week 27 of 2000 begins on 2 July, the day from which four digits were required. */
const firstFourDigitWeek = 27

const noSuchWeek = (typed: string, week: number, allowed: string): Refusal<'no-such-week'> =>
  refused('no-such-week', {
    found: `${typed}: week ${String(week).padStart(2, '0')}`,
    allowed,
    do: 'Read the code again: the week comes before the year.',
  })

const notAfter = (
  typed: string,
  date: BuildDate,
  inspectedOn: CalendarDay,
): Reading<BuildDate, DateCodeFault> =>
  sundayOfWeek(date) <= inspectedOn
    ? taken(date)
    : refused('in-the-future', {
        found: `${typed}: week ${date.week} of ${date.year} begins on ${sundayOfWeek(date)}`,
        allowed: `a week that has begun by ${inspectedOn}`,
        do: 'Read the code again, week before year. A tire made before July 2000 has three digits.',
      })
