import type { Pool } from 'pg'
import type { Clock } from '../deps.ts'
import { listShopZones } from './digest-notes.ts'
import { type DigestPlaces, writeDigest } from './write-digest.ts'

export type DigestKeeper = {
  /** Writes the digests that are due: of days that ended since the last call. */
  readonly closeDays: () => Promise<void>
  /** Stops looking at the clock, and writes a last digest of what is not covered yet. */
  readonly stop: () => Promise<void>
}

/** How often the clock is looked at: a day's digest is at most this late. */
const lookEveryMs = 60_000

/** The day at an instant where the shop is, YYYY-MM-DD. */
export const dayAt = (at: Date, timeZone: string): string =>
  new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(at)

/**
 * Writes each shop's digest at the close of its business day, and at stop. The first call of `closeDays`, at start,
 * writes what is overdue. A digest that cannot be written is reported through `problem` and tried again at the next look.
 */
export const keepDigests = (parts: {
  readonly pool: Pool
  readonly clock: Clock
  readonly places: DigestPlaces
  readonly problem: (words: string, error: unknown) => void
}): DigestKeeper => {
  const { pool, clock, places, problem } = parts
  const closedUpTo = new Map<string, string>()
  let working: Promise<void> = Promise.resolve()

  const write = async (isLast: boolean): Promise<void> => {
    const now = clock.now()
    for (const { shopId, name, timeZone } of await listShopZones(pool)) {
      const today = dayAt(now, timeZone)
      if (!isLast && closedUpTo.get(shopId) === today) continue
      // What was written since midnight goes along: a digest leaves out nothing that is there when it is made.
      const day = isLast ? today : dayAt(new Date(now.getTime() - 86_400_000), timeZone)
      try {
        await writeDigest(pool, places, { shopId, day, at: now.toISOString() })
        closedUpTo.set(shopId, today)
      } catch (error) {
        problem(
          `The daily digest of ${name} could not be written. What is not covered can still be altered unseen.`,
          error,
        )
      }
    }
  }
  const inTurn = (isLast: boolean): Promise<void> => {
    working = working
      .then(() => write(isLast))
      .catch((error: unknown) => problem('No digest was written.', error))
    return working
  }
  const timer = setInterval(() => void inTurn(false), lookEveryMs)
  timer.unref()
  return {
    closeDays: () => inTurn(false),
    stop: () => {
      clearInterval(timer)
      return inTurn(true)
    },
  }
}
