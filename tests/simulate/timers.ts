/** Time that passes only when the simulation says so. */
export type Timers = {
  /** Milliseconds since 1970. */
  readonly now: () => number
  /** Does the work once that much time has passed, unless `isAlive` says that nobody waits for it any more. */
  readonly after: (milliseconds: number, work: () => void, isAlive?: () => boolean) => void
  /** Lets time pass and gives back the work that falls due, earliest first. */
  readonly pass: (milliseconds: number) => readonly (() => void)[]
  /** How long until something falls due; `null`: nothing will. */
  readonly untilNext: () => number | null
}

type Timer = { readonly at: number; readonly work: () => void; readonly isAlive: () => boolean }

export const startTimers = (start: number): Timers => {
  let now = start
  let timers: Timer[] = []
  return {
    now: () => now,
    after: (milliseconds, work, isAlive = () => true) => {
      timers.push({ at: now + milliseconds, work, isAlive })
    },
    pass: (milliseconds) => {
      now += milliseconds
      const due = timers.filter(({ at }) => at <= now).toSorted((one, other) => one.at - other.at)
      if (due.length > 0) timers = timers.filter(({ at }) => at > now)
      return due.map(
        ({ work, isAlive }) =>
          () =>
            isAlive() ? work() : undefined,
      )
    },
    untilNext: () => {
      timers = timers.filter(({ isAlive }) => isAlive())
      return timers.length === 0 ? null : Math.max(0, Math.min(...timers.map(({ at }) => at)) - now)
    },
  }
}
