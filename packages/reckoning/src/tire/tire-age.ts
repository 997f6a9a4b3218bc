import { type CalendarDay, dayNumber, fullYearsBetween } from '../units/calendar-day.ts'
import { sundayOfWeek } from './build-week.ts'
import type { BuildDate } from './read-date-code.ts'

/** `atLeast`: the decade is not known, the tire may be ten or twenty years older. */
export type TireAge = { readonly days: number; readonly fullYears: number; readonly atLeast: boolean }

/**
 * How old a tire is on the day of an inspection, from the Sunday that begins the week it was made in. The vehicle's
 * or the tire's maker says at what age a tire must be replaced.
 *
 * @formula days between that Sunday and the day; full years as birthdays are counted
 * @units days and years; the day as YYYY-MM-DD
 * @limits up to six days too many, since the code does not name the day; a date on or before the day of the inspection
 * @source 49 CFR 574.5(b)(3), date code (quoted); counting from the Sunday: this program's own rule
 */
export const tireAge = (made: BuildDate, inspectedOn: CalendarDay): TireAge => {
  const sunday = sundayOfWeek(made)
  return {
    days: dayNumber(inspectedOn) - dayNumber(sunday),
    fullYears: fullYearsBetween(sunday, inspectedOn),
    atLeast: !made.decadeKnown,
  }
}
