import type { Timed } from '@bayledger/ledger/timed'
import * as z from 'zod/mini'

/** The clocks of the tablet, in milliseconds: of the day, and the one that only runs forward while a page is open. */
export type TabletClock = {
  readonly ofTheDay: () => number
  readonly steady: () => number
  /** Identifies one loading of the page: the steady clock starts over with each. */
  readonly pageOpenedAt: number
}

/** Something that is timed on this tablet. `kept`: what was filled in when it began. */
export const Watch = z.strictObject({
  startedAt: z.number(),
  steadyAt: z.number(),
  pageOpenedAt: z.number(),
  /** Whole seconds; `null` while it runs. */
  stoppedAfter: z.nullable(z.int()),
  kept: z.record(z.string(), z.string()),
})
export type Watch = z.infer<typeof Watch>

export const startWatch = (clock: TabletClock, kept: Watch['kept'] = {}): Watch => ({
  startedAt: clock.ofTheDay(),
  steadyAt: clock.steady(),
  pageOpenedAt: clock.pageOpenedAt,
  stoppedAfter: null,
  kept,
})

/**
 * Whole seconds that a watch has run. The steady clock stops while a tablet sleeps and starts over with the page, and the
 * clock of the day may be set back: the larger of the two counts. The server compares it with its own clock.
 */
export const secondsOf = (watch: Watch, clock: TabletClock): number => {
  if (watch.stoppedAfter !== null) return watch.stoppedAfter
  const steady = watch.pageOpenedAt === clock.pageOpenedAt ? clock.steady() - watch.steadyAt : 0
  return Math.floor(Math.max(0, steady, clock.ofTheDay() - watch.startedAt) / 1_000)
}

/** A watch that is stopped keeps what it said first. */
export const stopWatch = (watch: Watch, clock: TabletClock): Watch => ({
  ...watch,
  stoppedAfter: secondsOf(watch, clock),
})

const weekSeconds = 7 * 24 * 3_600

/** What an entry says of it; `null` where nothing was timed, or a watch was forgotten for a week. */
export const timedBy = (watch: Watch | null, clock: TabletClock): Timed => {
  if (watch === null) return null
  const seconds = secondsOf(watch, clock)
  return seconds > weekSeconds ? null : { startedAt: new Date(watch.startedAt).toISOString(), seconds }
}
