import { chanceOf } from './chance.ts'

/** A day's temperatures in °F: the mean, and how cold the night after it gets. */
export type DayWeather = { readonly mean: number; readonly overnightLow: number }

const dayMs = 86_400_000

/** Days since 1970 of a day such as `2025-03-04`. */
export const dayNumberOf = (day: string): number => Math.round(Date.parse(day) / dayMs)
export const dayOf = (number: number): string => new Date(number * dayMs).toISOString().slice(0, 10)

/**
 * The weather of Brindle Falls, invented: a mean of 49 °F over the year, 25 warmer in July and colder in January, and some
 * degrees off from day to day.
 */
export const weatherOn = (day: string): DayWeather => {
  const number = dayNumberOf(day)
  return { mean: meanOn(number), overnightLow: Math.round(meanOn(number + 1) - 9) }
}

/** Colder in the morning than in the afternoon, in whole °F. */
export const outdoorAt = (day: string, hour: number): number =>
  Math.round(weatherOn(day).mean + 8 * Math.sin(((hour - 9.5) / 24) * 2 * Math.PI))

const meanOn = (number: number): number => {
  const coldest = dayNumberOf('2026-01-15')
  const season = -25 * Math.cos(((number - coldest) / 365.25) * 2 * Math.PI)
  return 49 + season + chanceOf(`brindle-falls/${number}`).between(-6, 6)
}
