import type { Timed } from '@bayledger/ledger/timed'
import * as z from 'zod/mini'

/** The clocks of the tablet, in milliseconds: of the day, and the one that only runs forward while a page is open. */
export type TabletClock = {
  readonly ofTheDay: () => number
  readonly steady: () => number
  /** Identifies one loading of the page: the steady clock starts over with each. */
  readonly pageOpenedAt: number
  /** By how much the server's clock is ahead of that of the day; `null` where that is not known now. */
  readonly serverAheadMs: () => number | null
}

const Seconds = z.int()

/** Something that is timed on this tablet. `kept`: what was filled in when it began. */
export const Watch = z.strictObject({
  startedAt: z.number(),
  steadyAt: z.number(),
  pageOpenedAt: z.number(),
  serverAheadMs: z.optional(z.nullable(z.number())),
  /** Whole seconds; `null` while it runs. */
  stoppedAfter: z.nullable(Seconds),
  /** How it was stopped where the tablet was not awake all the time. */
  across: z.optional(z.strictObject({ steadySeconds: z.nullable(Seconds), corrected: z.boolean() })),
  kept: z.record(z.string(), z.string()),
})
export type Watch = z.infer<typeof Watch>

export const startWatch = (clock: TabletClock, kept: Watch['kept'] = {}): Watch => ({
  startedAt: clock.ofTheDay(),
  steadyAt: clock.steady(),
  pageOpenedAt: clock.pageOpenedAt,
  serverAheadMs: clock.serverAheadMs(),
  stoppedAfter: null,
  kept,
})

/** While the tablet is awake its two clocks run apart by less (our own bound, no source). */
const awakeSeconds = 5

type Reading = { readonly seconds: number; readonly across?: Watch['across'] }

/**
 * What a watch says now. The steady clock counts while the tablet is awake. In sleep it may stand still, and it starts over
 * with the page: then the clock of the day counts, corrected by the server's where that is known at both ends.
 */
const readingOf = (watch: Watch, clock: TabletClock): Reading => {
  if (watch.stoppedAfter !== null)
    return { seconds: watch.stoppedAfter, ...(watch.across && { across: watch.across }) }
  const steady = watch.pageOpenedAt === clock.pageOpenedAt ? (clock.steady() - watch.steadyAt) / 1_000 : null
  const [from = null, to] = [watch.serverAheadMs, clock.serverAheadMs()]
  const corrected = from !== null && to !== null
  const correction = corrected ? to - from : 0
  const day = Math.max(0, clock.ofTheDay() - watch.startedAt + correction) / 1_000
  return steady !== null && Math.abs(day - steady) <= awakeSeconds
    ? { seconds: Math.floor(steady) }
    : {
        seconds: Math.floor(day),
        across: { steadySeconds: steady === null ? null : Math.floor(steady), corrected },
      }
}

/** Whole seconds that a watch has run. */
export const secondsOf = (watch: Watch, clock: TabletClock): number => readingOf(watch, clock).seconds

/** A watch that is stopped keeps what it said first. */
export const stopWatch = (watch: Watch, clock: TabletClock): Watch => {
  const { seconds, across } = readingOf(watch, clock)
  return { ...watch, stoppedAfter: seconds, ...(across && { across }) }
}

const weekSeconds = 7 * 24 * 3_600

/** What an entry says of it; `null` where nothing was timed, or a watch was forgotten for a week. */
export const timedBy = (watch: Watch | null, clock: TabletClock): Timed => {
  if (watch === null) return null
  const reading = readingOf(watch, clock)
  return reading.seconds > weekSeconds
    ? null
    : { startedAt: new Date(watch.startedAt).toISOString(), ...reading }
}
