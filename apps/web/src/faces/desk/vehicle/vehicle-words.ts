import type { TimedReading } from '@bayledger/contract/vehicle-page'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** "41 days", whole ones; "1 day"; "0 days" on the same day. */
export const daysSince = (at: string, now: string): string => {
  const days = Math.max(0, Math.floor((Date.parse(now) - Date.parse(at)) / 86_400_000))
  return `${days} ${days === 1 ? 'day' : 'days'}`
}

/** Each wheel's last reading; the readings are in the order of their time. */
export const lastReadings = (
  readings: readonly TimedReading[],
): Readonly<Partial<Record<WheelPosition, TimedReading>>> =>
  Object.fromEntries(readings.map((reading) => [reading.wheel, reading]))
