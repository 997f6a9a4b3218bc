import { doneAt, type OpenStretch } from './open-hours.ts'
import { type LearnedSeconds, secondsOfStep, type TimedCode } from './step-seconds.ts'

/** What an order's plan still holds: how many open steps of each kind. */
export type StepCounts = Readonly<Partial<Record<TimedCode, number>>>

/** When a vehicle will be ready. */
export type ReadyTime =
  /** `partAt`: it waits for a part that was promised for then. Both in milliseconds since 1970. */
  | { readonly is: 'about'; readonly at: number; readonly partAt: number | null }
  /** A part is missing, and nobody knows for when. */
  | { readonly is: 'part-without-date' }

/**
 * How long the steps of a plan take one person.
 *
 * @formula sum of the seconds of each step
 * @units Seconds.
 * @source What the place took for such steps, else our own figures.
 */
export const secondsOfSteps = (steps: StepCounts, learned: LearnedSeconds): number =>
  (Object.entries(steps) as [TimedCode, number][]).reduce(
    (sum, [code, count]) => sum + count * secondsOfStep(code, learned),
    0,
  )

/**
 * When a vehicle will be ready, from what is left of its plan. Nothing begins before what is ahead of it is done, nor before a
 * named wait is over; a part that is waited for comes at its promised time and not before. A part whose promised time has
 * passed has no date any more. `null`: not within the two weeks that are looked at.
 *
 * @formula (the latest of now + what is ahead, the end of a wait, the part's arrival) + the work, in open hours
 * @units Milliseconds since 1970; seconds of work.
 * @source This program's own rule.
 */
export const readyTime = ({
  now,
  workSeconds,
  aheadSeconds,
  waitsUntil,
  partAt,
  open,
}: {
  readonly now: number
  readonly workSeconds: number
  readonly aheadSeconds: number
  readonly waitsUntil: number | null
  readonly partAt: number | null
  readonly open: readonly OpenStretch[]
}): ReadyTime | null => {
  if (partAt !== null && partAt <= now) return { is: 'part-without-date' }
  const free = doneAt(now, aheadSeconds, open)
  if (free === null) return null
  const at = doneAt(Math.max(free, waitsUntil ?? 0, partAt ?? 0), workSeconds, open)
  return at === null ? null : { is: 'about', at, partAt }
}

/**
 * A time as it is said to a person: up to the next five minutes within two hours, up to the next quarter of an hour beyond
 * them, since an estimate is no better than that.
 *
 * @units Milliseconds since 1970.
 * @source Our choice, no source.
 */
export const aboutTime = (at: number, now: number): number => {
  const step = at - now <= 2 * 3_600_000 ? 5 * 60_000 : 15 * 60_000
  return Math.ceil(at / step) * step
}
