import { type Reading, refused, taken } from '../reading.ts'
import { calendarDayWords } from '../words/typed-text.ts'

declare const calendarDay: unique symbol

/** A day of the Gregorian calendar as YYYY-MM-DD, in no time zone. Two of them compare as texts do. */
export type CalendarDay = string & { readonly [calendarDay]: true }

export type CalendarDayFault = 'not-a-day' | 'no-such-day'

/**
 * Reads a day as YYYY-MM-DD.
 *
 * @limits the years 1900 to 2199
 * @source ISO 8601 for the notation (from memory); the limits are this program's own rule
 */
export const readCalendarDay = (typed: string): Reading<CalendarDay, CalendarDayFault> => {
  const parts = /^\s*(\d{4})-(\d{2})-(\d{2})\s*$/.exec(typed)
  if (!parts) return refused('not-a-day', typed, calendarDayWords.notADay)
  const [year = 0, month = 0, day = 0] = parts.slice(1).map(Number)
  const readsBack = dayOfNumber(dayNumberOf(year, month, day))
  if (year < 1900 || year > 2199 || readsBack !== typed.trim())
    return refused('no-such-day', typed, calendarDayWords.noSuchDay)
  return taken(readsBack)
}

/**
 * The days from 1970-01-01 to a day. 1970-01-04, a Sunday, is day 3.
 *
 * @formula 365 · years + leap days, with years that begin in March; in whole numbers throughout
 * @units days
 * @source the Gregorian rule of leap years (computed from definition)
 */
export const dayNumber = (day: CalendarDay): number => {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number)
  return dayNumberOf(year, month, date)
}

/**
 * The day that is so many days after 1970-01-01.
 *
 * @formula the inverse of `dayNumber`
 * @units days to YYYY-MM-DD
 * @source the Gregorian rule of leap years (computed from definition)
 */
export const dayOfNumber = (number: number): CalendarDay => {
  const sinceEra = number + daysFromEra
  let year = Math.floor((sinceEra * 400) / daysIn400Years) - 1
  while (daysBefore(year + 1) <= sinceEra) year += 1
  const inYear = sinceEra - daysBefore(year)
  const fromMarch = Math.floor((5 * inYear + 2) / 153)
  const date = inYear - daysBeforeMonth(fromMarch) + 1
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9
  return dayText(month <= 2 ? year + 1 : year, month, date)
}

/**
 * The Sunday on or before a day, as the number of that day.
 *
 * @formula n − (n + 4) mod 7, since day 0, 1970-01-01, was a Thursday
 * @units days since 1970-01-01
 * @source the Gregorian calendar (computed from definition)
 */
export const sundayOnOrBefore = (number: number): number => number - ((((number + 4) % 7) + 7) % 7)

/**
 * Whole years from one day to another, as a birthday is counted; 29 February counts on 1 March where the year has
 * none.
 *
 * @formula the years apart, less one where the later day's month and date come before the earlier's
 * @units years
 * @source common practice, no source
 */
export const fullYearsBetween = (from: CalendarDay, to: CalendarDay): number =>
  Number(to.slice(0, 4)) - Number(from.slice(0, 4)) - (to.slice(5) < from.slice(5) ? 1 : 0)

const dayText = (year: number, month: number, date: number): CalendarDay =>
  `${String(year).padStart(4, '0')}-${twoDigits(month)}-${twoDigits(date)}` as CalendarDay

const twoDigits = (number: number): string => String(number).padStart(2, '0')

const daysIn400Years = 146_097
/** From 0000-03-01, where a cycle of 400 years begins, to 1970-01-01. */
const daysFromEra = 719_468

/** Days before the year that begins on 1 March. */
const daysBefore = (year: number): number =>
  365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400)

/** Days before a month that is counted from March as 0: 31, 30, 31, 30, 31, and again. */
const daysBeforeMonth = (fromMarch: number): number => Math.floor((153 * fromMarch + 2) / 5)

const dayNumberOf = (year: number, month: number, date: number): number => {
  const marchYear = month <= 2 ? year - 1 : year
  const fromMarch = month <= 2 ? month + 9 : month - 3
  return daysBefore(marchYear) + daysBeforeMonth(fromMarch) + date - 1 - daysFromEra
}
