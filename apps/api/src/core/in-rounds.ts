export type Rounds = {
  /** Begins a round at once and then again each `everyMs`; one that still runs is not joined by another. */
  readonly keep: () => void
  /** Begins no other round and waits for the one that runs. */
  readonly stop: () => Promise<void>
}

/** Does `round` again and again. `failed` hears of a round that failed; the next one comes all the same. */
export const inRounds = (
  everyMs: number,
  round: () => Promise<unknown>,
  failed: (error: unknown) => void,
): Rounds => {
  let working: Promise<unknown> | null = null
  let timer: NodeJS.Timeout | undefined
  const look = () => {
    working ??= round()
      .catch(failed)
      .finally(() => {
        working = null
      })
  }
  return {
    keep: () => {
      timer = setInterval(look, everyMs)
      timer.unref()
      look()
    },
    stop: async () => {
      clearInterval(timer)
      await working
    },
  }
}
