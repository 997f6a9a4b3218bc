import { median } from './step-seconds.ts'

/** An estimate of readiness and what became of it, in milliseconds since 1970. */
export type Judged = { readonly estimated: number; readonly wasReady: number }

/** What estimates were worth. */
export type ReadyError = {
  readonly count: number
  /** How far half of them were off at most, minutes; `null` of none. */
  readonly medianMinutes: number | null
  /** How many were off by no more than 15 minutes. */
  readonly within15: number
}

/**
 * How far estimates of readiness were off, early or late alike.
 *
 * @formula median of |estimated − was ready|; how many of them are at most 15 minutes
 * @units Minutes.
 * @source This program's own measure.
 */
export const readyError = (judged: readonly Judged[]): ReadyError => {
  const minutes = judged.map(({ estimated, wasReady }) => Math.abs(estimated - wasReady) / 60_000)
  return {
    count: minutes.length,
    medianMinutes: median(minutes),
    within15: minutes.filter((off) => off <= 15).length,
  }
}
