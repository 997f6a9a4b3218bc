import type { Timed } from '../timed.ts'

/** The two clocks of a tablet may differ as much: they are read one after the other, and drift (our own bound, no source). */
const apartSeconds = 120

/**
 * The lesser of what the two clocks of a tablet say of one time, in seconds, where they contradict each other; `null` where
 * they do not. A steady clock stands still in sleep, so the clock of the day may be ahead of it where the server's time
 * bears it out; it can never be behind.
 */
export const clocksApart = (timed: Timed): number | null => {
  const { steadySeconds = null, corrected = false } = timed?.across ?? {}
  if (timed === null || steadySeconds === null) return null
  const ahead = timed.seconds - steadySeconds
  const isApart = ahead < -apartSeconds || (ahead > apartSeconds && !corrected)
  return isApart ? Math.min(timed.seconds, steadySeconds) : null
}
