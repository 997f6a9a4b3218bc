import { dayIn, instantOf } from '@bayledger/reckoning/ready/zoned-time'
import { nominalNow } from './calendar.ts'
import type { DemoLocation } from './places.ts'

const dayMinutes = 24 * 60
const allDay = { opens: '00:00', closes: '23:59' }

/**
 * The hours of a place of the demo, seven days from Monday, as they fall when its 11:40 of a Monday is played at another time of
 * another day: the demo is started at any hour, and its day is a working day. Where the played day would reach over
 * midnight, which hours on file cannot, the place is open all day.
 */
export const playedHours = ({ hours, timeZone }: DemoLocation, now: string): DemoLocation['hours'] => {
  const shift = minutesInto(Date.parse(now), timeZone) - minutesInto(nominalNow, timeZone)
  const times = hours.flatMap((day) => (day === null ? [] : [day.opens, day.closes].map(minutesOf)))
  if (times.some((minutes) => minutes + shift < 0 || minutes + shift >= dayMinutes))
    return hours.map(() => allDay)
  const moved = (time: string) => textOf(minutesOf(time) + shift)
  const played = hours.map((day) => day && { opens: moved(day.opens), closes: moved(day.closes) })
  const monday = (new Date(dayIn(new Date(now), timeZone)).getUTCDay() + 6) % 7
  return hours.map((_, day) => played[(day - monday + 7) % 7] ?? null)
}

/** Minutes since clocks in the zone showed midnight. */
const minutesInto = (instant: number, timeZone: string): number => {
  const midnight = instantOf(dayIn(new Date(instant), timeZone), '00:00', timeZone)
  return Math.floor((instant - Date.parse(midnight ?? '')) / 60_000)
}

const minutesOf = (time: string): number => {
  const [hours = 0, minutes = 0] = time.split(':').map(Number)
  return hours * 60 + minutes
}

const textOf = (minutes: number): string =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
