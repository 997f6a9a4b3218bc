/** What the server's clock was when it was last heard, by the clocks of this device; all in milliseconds. */
type Heard = {
  /** The server's clock is ahead of this device's clock of the day by so much. */
  readonly aheadMs: number
  /** How much the clock of the day was ahead of the steady one then: it changes with a sleep, or when the clock is set. */
  readonly dayAheadOfSteadyMs: number
}

let heard: Heard | null = null

/** An answer that took longer says too little of the time at which it was given. */
const slowMs = 10_000

/** Takes the server's time as it said it; `askedAt` and `answeredAt` are of this device's clock of the day. */
export const hearServerTime = (now: string, askedAt: number, answeredAt: number): void => {
  if (answeredAt < askedAt || answeredAt - askedAt > slowMs) return
  heard = {
    aheadMs: Date.parse(now) - (askedAt + answeredAt) / 2,
    dayAheadOfSteadyMs: Date.now() - performance.now(),
  }
}

/** The clocks run apart by less while nothing happens to them. */
const steadyMs = 2_000

/**
 * By how much the server's clock is ahead of this device's, in milliseconds; `null` where it was not heard since this page
 * was loaded, since the device last slept, or since its clock was set.
 */
export const serverAheadMs = (): number | null => {
  if (heard === null) return null
  const change = Date.now() - performance.now() - heard.dayAheadOfSteadyMs
  return Math.abs(change) > steadyMs ? null : heard.aheadMs
}
