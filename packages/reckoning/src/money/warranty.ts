import * as z from 'zod/mini'

const months = z.int().check(z.gte(0), z.lte(120))

/** For how long the shop stands by its own work and by a sensor that it fitted. Months; miles driven since, `null`: however many. */
export const WarrantyTerms = z.strictObject({
  laborMonths: months,
  sensorMonths: months,
  sensorMiles: z.nullable(z.int().check(z.gte(0), z.lte(500_000))),
})
export type WarrantyTerms = z.infer<typeof WarrantyTerms>

/**
 * What holds until a shop writes its own terms.
 *
 * @source Our choice; common practice, no source.
 */
export const usualWarranty: WarrantyTerms = { laborMonths: 12, sensorMonths: 24, sensorMiles: 24_000 }

/**
 * The day, as 2026-01-31, that many months later; the last of the month where it has no such day.
 *
 * @source This program's own rule.
 */
export const monthsAfter = (day: string, count: number): string => {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number)
  const first = new Date(Date.UTC(year, month - 1 + count, 1))
  const last = new Date(Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + 1, 0)).getUTCDate()
  first.setUTCDate(Math.min(date, last))
  return first.toISOString().slice(0, 10)
}

/** A moment of a vehicle: the day, and what its odometer read in miles; `null` where nobody read it. */
export type Moment = { readonly day: string; readonly miles: number | null }

/**
 * Whether a sensor is still covered. `until`: the last day. `person-decides`: in time, and the terms have a limit of miles that
 * nobody can compute because an odometer was not read.
 */
export type SensorCover = {
  readonly cover: 'covered' | 'ended' | 'person-decides'
  readonly until: string
  /** What the odometer may read at most; `null` where the terms have no such limit or nobody read it at the fitting. */
  readonly untilMiles: number | null
}

/**
 * Judges a sensor that the shop fitted by the shop's terms: covered up to and including the last day, and up to and including the
 * last mile, whichever comes first.
 *
 * @units Days as YYYY-MM-DD on the shop's clock; miles.
 * @source The shop's own terms; the rule is this program's own.
 */
export const sensorCover = (terms: WarrantyTerms, fitted: Moment, now: Moment): SensorCover => {
  const until = monthsAfter(fitted.day, terms.sensorMonths)
  const untilMiles =
    terms.sensorMiles === null || fitted.miles === null ? null : fitted.miles + terms.sensorMiles
  const isOver = now.day > until || (untilMiles !== null && now.miles !== null && now.miles > untilMiles)
  if (isOver) return { cover: 'ended', until, untilMiles }
  const isUnknown = terms.sensorMiles !== null && (untilMiles === null || now.miles === null)
  return { cover: isUnknown ? 'person-decides' : 'covered', until, untilMiles }
}
