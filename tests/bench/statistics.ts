/** What a row of times says: milliseconds a time at the middle and at the slow end, and how many fit into a second. */
export type Summary = { readonly p50: number; readonly p99: number; readonly perSecond: number }

/** Nearest-rank percentile of values sorted upward; `share` from 0 to 1. NaN without values. */
export const percentile = (sorted: readonly number[], share: number): number =>
  sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN

/**
 * Sums up times in milliseconds. `elapsed` is the wall time of the whole in milliseconds where several ran side by
 * side; without it they ran one after the other.
 */
export const summarize = (times: readonly number[], elapsed?: number): Summary => {
  const sorted = times.toSorted((a, b) => a - b)
  const whole = elapsed ?? times.reduce((sum, time) => sum + time, 0)
  return {
    p50: percentile(sorted, 0.5),
    p99: percentile(sorted, 0.99),
    perSecond: (times.length * 1000) / whole,
  }
}
