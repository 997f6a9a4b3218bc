import type { StepCode } from '../step.ts'

/** A step by what it is; `other`: planned while plans still held sentences. */
export type TimedCode = StepCode | 'other'

/** How long steps of one place took, by what they are. */
export type StepTime = { readonly code: TimedCode; readonly seconds: number }

/** What a place has taken for a step, seconds; a code is missing where too few were seen. */
export type LearnedSeconds = Readonly<Partial<Record<TimedCode, number>>>

/** Steps of a kind that must be seen before their median takes the place of our own figure. Our choice, no source. */
export const leastSeen = 5

/** The newest steps of a kind that count, so that a shop that gets faster is believed. Our choice, no source. */
export const mostCounted = 40

/** A longer pause before a step was something else: a lunch, another vehicle, the night. Our choice, no source. */
const longestSeconds = 30 * 60

/** A drive is the one step that takes longer than a pause. Our choice, no source. */
const longestDriveSeconds = 90 * 60

/**
 * Whether the time before a step can have been spent on it.
 *
 * @units Seconds.
 * @source Our choice, no source: at most 30 minutes, a drive at most 90.
 */
export const isPlausible = ({ code, seconds }: StepTime): boolean =>
  seconds >= 0 && seconds <= (isDrive(code) ? longestDriveSeconds : longestSeconds)

const isDrive = (code: TimedCode): boolean => code === 'proof-drive' || code === 'learning-drive'

/**
 * What a place takes for each kind of step: the median of the newest ones, without what a lunch or another vehicle lies in.
 *
 * @formula median of the last 40 plausible times of a code; none where fewer than 5 were seen
 * @units Seconds.
 * @source Our choice, no source, of how many count; the median so that a few odd ones move nothing.
 */
export const learnSeconds = (newestFirst: readonly StepTime[]): LearnedSeconds => {
  const seen = new Map<TimedCode, number[]>()
  for (const time of newestFirst) {
    if (!isPlausible(time)) continue
    const own = seen.get(time.code) ?? []
    if (own.length < mostCounted) seen.set(time.code, [...own, time.seconds])
  }
  return Object.fromEntries(
    [...seen].flatMap(([code, seconds]) =>
      seconds.length < leastSeen ? [] : [[code, median(seconds) ?? 0]],
    ),
  )
}

/**
 * The middle of some numbers; between two middle ones their mean. `null` of none.
 *
 * @source The definition of the median.
 */
export const median = (numbers: readonly number[]): number | null => {
  const sorted = numbers.toSorted((one, other) => one - other)
  const upper = sorted[Math.floor(sorted.length / 2)]
  const lower = sorted[Math.ceil(sorted.length / 2) - 1]
  return upper === undefined || lower === undefined ? null : (lower + upper) / 2
}

/**
 * How long a step will take: what this place took, else a figure of ours.
 *
 * @units Seconds.
 * @source Our choice, no source: the figures of ours, until a place has done enough.
 */
export const secondsOfStep = (code: TimedCode, learned: LearnedSeconds): number =>
  learned[code] ?? ourSeconds[code] ?? 120

/** Where a place has no figure of its own yet; a step that is not listed takes two minutes. Our choice, no source. */
const ourSeconds: LearnedSeconds = {
  'confirm-placard': 60,
  'confirm-frequency': 60,
  'confirm-stud-torque': 60,
  'find-leak': 600,
  'find-leak-after-look': 300,
  'take-spare-out': 180,
  'lift-vehicle': 180,
  'lower-to-touching': 60,
  'lower-fully': 60,
  'take-wheel-off': 150,
  'repair-fastener': 900,
  'purge-sealant': 600,
  'purge-in-restraint': 900,
  'open-tire': 240,
  'repair-leak': 900,
  'match-tire': 120,
  'match-sensor': 120,
  'program-sensor': 120,
  'read-other-wheel': 60,
  'fit-sensor': 180,
  'renew-stem': 180,
  'seat-tire': 240,
  'balance-wheel': 240,
  'put-wheel-on': 120,
  'set-pressure': 60,
  'read-sensor': 60,
  relearn: 420,
  'learning-drive': 1_500,
  'proof-drive': 1_500,
}
