/** Something that is tried again and again: what fails is said once, and once more when it works again. */
export type Outage = {
  readonly failed: (error: unknown) => void
  readonly works: () => void
}

/** What is said of an outage. `over` gets how long it lasted, in whole seconds. */
export type OutageWords = {
  readonly begun: (error: unknown) => void
  readonly over: (seconds: number) => void
}

/** An outage may last for a day: a line in the log at each try would bury all others. */
export const watchOutage = (
  { begun, over }: OutageWords,
  nowMs: () => number = () => performance.now(),
): Outage => {
  let since: number | null = null
  return {
    failed: (error) => {
      if (since !== null) return
      since = nowMs()
      begun(error)
    },
    works: () => {
      if (since === null) return
      const seconds = Math.round((nowMs() - since) / 1000)
      since = null
      over(seconds)
    },
  }
}
