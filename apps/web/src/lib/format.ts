import type { Pressure } from '@bayledger/reckoning/quantity'
/**
 * Words for times and money. The time zone is the shop's, never the reader's device; days are in English unless a locale
 * is given.
 */
export type Clock = { timeZone: string; locale?: string }

/** A formatter costs more to make than to use, and a floor of 400 orders asks for a thousand times. */
const formatters = new Map<string, Intl.DateTimeFormat>()
const formatter = (locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat => {
  const key = JSON.stringify([locale, options])
  const made = formatters.get(key) ?? new Intl.DateTimeFormat(locale, options)
  formatters.set(key, made)
  return made
}

/** "9:12 AM" in the shop's time, as on the report. `instant` is UTC text such as 2026-01-12T16:40:00.000Z. */
export function clockTime(instant: string, { timeZone, locale = 'en-US' }: Clock): string {
  return (
    formatter(locale, { timeZone, hour: 'numeric', minute: '2-digit', hour12: true })
      .format(new Date(instant))
      // Browsers differ in the space before AM and PM, and a line must not break there.
      .replace(/[\u202f ]/g, '\u00a0')
  )
}

/** "09:12" as a time field of a form holds it, whatever it shows. */
export function fieldTime(instant: string, { timeZone }: Clock): string {
  return new Intl.DateTimeFormat('en-US', {
    timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(new Date(instant))
}

/** "9:12 AM" on the day of `now`, else "Jan 9, 9:12 AM": a time that is not today's says so. */
export function clockTimeOrDay(instant: string, now: string, clock: Clock): string {
  const time = clockTime(instant, clock)
  return dayOf(instant, clock) === dayOf(now, clock) ? time : `${dayOf(instant, clock)}, ${time}`
}

/** "9:12 AM" today, else "Jan 9, 9:12 AM", and "Jan 9, 2025, 9:12 AM" of another year: for what may be long past. */
export function clockTimeOrDate(instant: string, now: string, clock: Clock): string {
  const time = clockTime(instant, clock)
  const on = day(instant, now, clock)
  return on === dayOf(now, clock) ? time : `${on}, ${time}`
}

/** "Jan 12", with the year where it is not the year of `now`. */
export function day(instant: string, now: string, clock: Clock): string {
  const year = (at: string) =>
    new Intl.DateTimeFormat('en-US', { timeZone: clock.timeZone, year: 'numeric' }).format(new Date(at))
  if (year(instant) === year(now)) return dayOf(instant, clock)
  return new Intl.DateTimeFormat(clock.locale ?? 'en-US', {
    timeZone: clock.timeZone,
    year: 'numeric',
    month: 'short',
    day: 'numeric',
  }).format(new Date(instant))
}

/** The day it is by a clock now, as a date field of a form holds it: 2026-01-12. */
export const dayIn = (timeZone: string): string =>
  new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(
    new Date(),
  )

/** Whole minutes from one instant to another, never below 0: clocks of two devices differ. */
export function ageMinutes(since: string, now: string): number {
  return Math.max(0, Math.floor((Date.parse(now) - Date.parse(since)) / 60_000))
}

/** "148 min": ages are minutes, so that they compare at a glance; from a whole day on they are days. */
export const minutes = (count: number): string => {
  const days = Math.floor(count / (24 * 60))
  if (days === 0) return `${count.toLocaleString('en-US')} min`
  return days === 1 ? '1 day' : `${days} days`
}

/** "$184.20" from integer cents; a reduction reads "−$12.00". */
export function money(cents: number): string {
  const whole = Math.trunc(Math.abs(cents) / 100).toLocaleString('en-US')
  const part = String(Math.abs(cents) % 100).padStart(2, '0')
  return `${cents < 0 ? '−' : ''}$${whole}.${part}`
}

function dayOf(instant: string, { timeZone, locale = 'en-US' }: Clock): string {
  return formatter(locale, { timeZone, month: 'short', day: 'numeric' }).format(new Date(instant))
}

/** How many decimals each unit of pressure is shown with, so that figures in a column are alike. */
const pressureDecimals: Readonly<Record<Pressure['unit'], number>> = { psi: 1, kPa: 0, bar: 2 }

/** "33.0" for 33 psi: a pressure's figure, without its unit. */
export const pressureText = ({ value, unit }: Pressure): string => value.toFixed(pressureDecimals[unit])
