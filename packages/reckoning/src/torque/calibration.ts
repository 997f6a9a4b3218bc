/** After how long or how many clicks a torque wrench is due for calibration, whichever comes first. */
export type CalibrationInterval = { readonly months: number; readonly cycles: number }

/**
 * The interval where a shop sets none of its own.
 *
 * @units Months from first use, clicks.
 * @source ISO 6789, as a calibration laboratory restates it, read online in 2026; from first use: from memory.
 */
export const usualInterval: CalibrationInterval = { months: 12, cycles: 5_000 }

/**
 * The day on which a wrench is due, counted from its first use after calibration. A shop's own interval counts where
 * it is the shorter one; it never moves the day past twelve months or the count past 5,000.
 *
 * @units Days as YYYY-MM-DD. First used 2025-10-01: due 2026-10-01, or on the day of its 5,000th click before that.
 * @limits A month without that day ends on its last: 2024-02-29 and twelve months are 2025-02-28.
 * @source ISO 6789, as a calibration laboratory restates it, read online in 2026.
 */
export const calibrationDueOn = (
  firstUsedOn: string,
  /** The day on which the count of clicks was reached; `null` while it is not. */
  cyclesReachedOn: string | null,
  own: CalibrationInterval = usualInterval,
): string => {
  const byMonths = monthsAfter(firstUsedOn, Math.min(own.months, usualInterval.months))
  return cyclesReachedOn !== null && cyclesReachedOn < byMonths ? cyclesReachedOn : byMonths
}

/**
 * Why a wrench is out of calibration, if it is: its day has passed or its clicks are spent. On its due day it may
 * still be used.
 *
 * @units Days as YYYY-MM-DD; clicks.
 * @source ISO 6789, as a calibration laboratory restates it, read online in 2026. The due day itself: this program's
 * own rule.
 */
export const calibrationLapse = (
  wrench: { readonly dueOn: string; readonly cycles: number },
  today: string,
  own: CalibrationInterval = usualInterval,
): 'day' | 'cycles' | null =>
  wrench.dueOn < today ? 'day' : cyclesLeft(wrench.cycles, own) === 0 ? 'cycles' : null

/**
 * Clicks that a wrench has before it is due.
 *
 * @source ISO 6789, as a calibration laboratory restates it, read online in 2026.
 */
export const cyclesLeft = (cycles: number, own: CalibrationInterval = usualInterval): number =>
  Math.max(0, Math.min(own.cycles, usualInterval.cycles) - cycles)

/**
 * The working day, counted from today as the first, on which a wrench will have spent its clicks. At 200 a day 5,000
 * are spent on the 25th.
 *
 * @limits 0 where they are spent already; `null` where it clicks on no day.
 * @source Arithmetic.
 */
export const workingDaysLeft = (
  cycles: number,
  cyclesPerDay: number,
  own: CalibrationInterval = usualInterval,
): number | null => (cyclesPerDay > 0 ? Math.ceil(cyclesLeft(cycles, own) / cyclesPerDay) : null)

const monthsAfter = (day: string, months: number): string => {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const lastOfMonth = new Date(Date.UTC(year, month - 1 + months + 1, 0)).getUTCDate()
  return new Date(Date.UTC(year, month - 1 + months, Math.min(date, lastOfMonth))).toISOString().slice(0, 10)
}
