const minuteMs = 60_000

/** A promise slips only by more than this, so that an estimate that wavers calls nobody. Our choice, no source. */
const slipsAfterMs = 10 * minuteMs

/** What a new promise leaves beyond the estimate, so that it does not slip at once. Our choice, no source. */
const spareMs = 15 * minuteMs

/**
 * Whether the customer has to hear of a later time. It begins when the estimate is more than ten minutes past the promise, and
 * ends when it is back within the promise, so that it does not come and go. A promise that has passed is late, not slipping:
 * the estimate is still compared with it.
 *
 * @units Milliseconds since 1970.
 * @source Our choice, no source.
 */
export const promiseSlips = ({
  readyAt,
  promisedAt,
  slipped,
}: {
  readonly readyAt: number
  readonly promisedAt: number
  /** Whether it slipped when it was looked at last. */
  readonly slipped: boolean
}): boolean => readyAt > promisedAt + (slipped ? 0 : slipsAfterMs)

/**
 * The time that is promised next: the estimate and some minutes to spare, up to the next quarter of an hour.
 *
 * @units Milliseconds since 1970.
 * @source Our choice, no source.
 */
export const nextPromise = (readyAt: number): number =>
  Math.ceil((readyAt + spareMs) / (15 * minuteMs)) * 15 * minuteMs
