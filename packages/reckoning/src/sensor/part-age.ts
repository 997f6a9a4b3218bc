/** How long a sensor has been on the shelf, where its cell runs down as well. */
export type PartAge = 'fresh' | 'past-shelf-limit' | 'quarantine' | 'not-yet-made'

/**
 * A sensor's status by its age, from the month it was made in (2025-08) and the day (2026-01-12). Months count by the
 * calendar, because the day of a part is not known.
 *
 * @formula months = 12 × years apart + months apart; up to 24, or to the shop's own shorter limit, is fresh, over 36 is
 * quarantine
 * @source this program's own rule; that cells run down on the shelf is common practice, no source
 */
export const partAge = (madeMonth: string, onDay: string, shelfMonths: number | null = null): PartAge => {
  const months = monthsSinceYearZero(onDay) - monthsSinceYearZero(madeMonth)
  if (months < 0) return 'not-yet-made'
  if (months <= Math.min(usualShelfMonths, shelfMonths ?? usualShelfMonths)) return 'fresh'
  return months <= 36 ? 'past-shelf-limit' : 'quarantine'
}

const usualShelfMonths = 24

const monthsSinceYearZero = (day: string): number => Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7))
