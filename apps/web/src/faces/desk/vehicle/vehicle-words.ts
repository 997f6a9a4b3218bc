import type { FittedSensor, TimedReading } from '@bayledger/contract/vehicle-page'
import { dayIn } from '@bayledger/reckoning/ready/zoned-time'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** "41 days", by the calendar of the shop's zone, as a customer counts them; "1 day"; "0 days" on the same day. */
export const daysSince = (at: string, now: string, timeZone: string): string => {
  const midnight = (instant: string) => Date.parse(dayIn(new Date(instant), timeZone))
  const days = Math.max(0, Math.round((midnight(now) - midnight(at)) / 86_400_000))
  return `${days} ${days === 1 ? 'day' : 'days'}`
}

/** What the shop's terms say of a sensor today, for who writes the estimate. */
export const coverWords = ({ cover, until, untilMiles }: FittedSensor['warranty']): string => {
  const day = dayWords(until)
  const limit = untilMiles === null ? '' : `, up to ${untilMiles.toLocaleString('en-US')} mi`
  switch (cover) {
    case 'covered':
      return `covered until ${day}${limit}`
    case 'ended':
      return `no longer covered (until ${day}${limit})`
    case 'person-decides':
      return `covered until ${day} at most; read the odometer and decide`
  }
}

/** "Jan 12, 2028" of a date such as 2028-01-12. */
export const dayWords = (day: string): string =>
  new Date(`${day}T12:00:00Z`).toLocaleDateString('en-US', {
    ...{ year: 'numeric', month: 'short', day: 'numeric', timeZone: 'UTC' },
  })

/** Each wheel's last reading; the readings are in the order of their time. */
export const lastReadings = (
  readings: readonly TimedReading[],
): Readonly<Partial<Record<WheelPosition, TimedReading>>> =>
  Object.fromEntries(readings.map((reading) => [reading.wheel, reading]))
