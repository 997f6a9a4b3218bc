import { type CalendarDay, dayNumber, dayOfNumber, sundayOnOrBefore } from '../units/calendar-day.ts'

/** A week as tires are dated: it begins on a Sunday and belongs to the year of that Sunday. */
export type BuildWeek = { readonly year: number; readonly week: number }

/**
 * The Sunday that begins a week of the tire maker's calendar. Week 1 is the first full week of the year, Sunday to
 * Saturday; this is not the week of ISO 8601, which begins on a Monday and may begin in the year before. Week 1 of 2009
 * begins on 2009-01-04.
 *
 * @formula the first Sunday of January + 7 · (week − 1) days
 * @units days as YYYY-MM-DD
 * @limits weeks 1 to `weeksOfYear`
 * @source 49 CFR 574.5(b)(3), date code: "the first full calendar week" (quoted); that a calendar week runs from Sunday
 * to Saturday: from memory
 */
export const sundayOfWeek = ({ year, week }: BuildWeek): CalendarDay =>
  dayOfNumber(firstSunday(year) + 7 * (week - 1))

/**
 * How many weeks a year has: 53 where its first Sunday leaves room for them, else 52. Only 2000, 2006, 2012, 2017,
 * 2023, 2028, 2034 and 2040 have 53 between 2000 and 2040.
 *
 * @formula (first Sunday of the next year − first Sunday of the year) / 7
 * @units weeks
 * @source as for `sundayOfWeek`
 */
export const weeksOfYear = (year: number): number => (firstSunday(year + 1) - firstSunday(year)) / 7

/** The first Sunday of a year is the last on or before 7 January. */
const firstSunday = (year: number): number => sundayOnOrBefore(dayNumber(`${year}-01-07` as CalendarDay))
