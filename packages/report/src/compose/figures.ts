import type { Distance, Pressure, Temperature, Torque } from '@bayledger/reckoning/quantity'
import type { Cell, Figure } from '../content.ts'
import type { Spoken } from './spoken.ts'

const cells = ({ language }: Spoken) => language.report.cells

export const words = (text: string): Cell => ({ kind: 'words', text })
export const gap = (text: string): Cell => ({ kind: 'gap', text })
export const good = (text: string): Cell => ({ kind: 'good', text })
export const notChecked = (context: Spoken): Cell => gap(cells(context).notChecked)

/** A fact or, where there is none, the gap that says so. */
export const orNotChecked = <T>(
  context: Spoken,
  value: T | null | undefined,
  cell: (value: T) => Cell,
): Cell => (value === null || value === undefined ? notChecked(context) : cell(value))

/** The same for what is written down rather than checked: a plate, an odometer. */
export const recordedOr = <T>(
  context: Spoken,
  value: T | null | undefined,
  cell: (value: T) => Cell,
): Cell => (value === null || value === undefined ? gap(cells(context).notRecorded) : cell(value))

const least: Readonly<Record<string, number>> = { psi: 1, bar: 2 }

/**
 * A number with at least the decimals its unit is read to, and no digit that was entered dropped. English and Spanish
 * write numbers alike in the United States.
 */
export const number = (value: number, unit = ''): string => {
  const entered = String(value).split('.')[1]?.length ?? 0
  return value.toLocaleString('en-US', {
    minimumFractionDigits: least[unit] ?? 0,
    maximumFractionDigits: Math.max(least[unit] ?? 0, Math.min(entered, 3)),
  })
}

export const pressure = ({ value, unit }: Pressure): Figure => ({
  kind: 'figure',
  value: number(value, unit),
  unit,
})

/** A label's figure as printed there: no decimals are added to it. */
export const labelPressure = (psi: number): Figure => ({ kind: 'figure', value: number(psi), unit: 'psi' })

export const temperature = ({ value, unit }: Temperature): Figure => ({
  kind: 'figure',
  value: number(value),
  unit: `°${unit}`,
})

export const torque = ({ value, unit }: Torque): Figure => ({ kind: 'figure', value: number(value), unit })

export const distance = ({ value, unit }: Distance): Figure => ({
  kind: 'figure',
  value: number(value),
  unit,
})

export const figureWords = ({ value, unit }: Figure): string => `${value} ${unit}`.trim()

/** The last four characters of a sensor's ID: the whole of it is a radio mark of the customer's vehicle. */
export const lastFour = (sensorId: string): string => `…${sensorId.slice(-4).toUpperCase()}`

/** An instant by the shop's clock, its day always with it: the report is read years later. */
export const momentWords = (
  { language }: Spoken,
  instant: string,
  timeZone: string,
  zone: Pick<Intl.DateTimeFormatOptions, 'timeZoneName'> = {},
): string =>
  new Intl.DateTimeFormat(language.locale, {
    timeZone,
    year: 'numeric',
    month: 'short',
    day: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
    ...zone,
  }).format(new Date(instant))

/** The same with its zone. */
export const clockWords = (spoken: Spoken, instant: string, timeZone: string): string =>
  momentWords(spoken, instant, timeZone, { timeZoneName: 'short' })

/** The shop's own day of an instant, YYYY-MM-DD. */
export const dayOf = (instant: string, timeZone: string): string => {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).formatToParts(new Date(instant))
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? ''
  return `${part('year')}-${part('month')}-${part('day')}`
}

/** A calendar day, YYYY-MM-DD, in words. */
export const dayWords = ({ language }: Spoken, day: string): string =>
  new Intl.DateTimeFormat(language.locale, {
    timeZone: 'UTC',
    year: 'numeric',
    month: 'short',
    day: 'numeric',
  }).format(new Date(`${day}T00:00:00.000Z`))

export const dollars = (cents: number): string =>
  `${cents < 0 ? '−' : ''}$${(Math.abs(cents) / 100).toFixed(2)}`
