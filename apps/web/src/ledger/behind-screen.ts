export type BehindScreenWorld = {
  readonly retryAfter: (milliseconds: number, retry: () => void) => void
  /** One page of a tablet works at a time: does the work while no other page does any. */
  readonly alone: (work: () => Promise<void>) => Promise<void>
}

export type BehindScreen = {
  /** Works now, or once more after the work that is under way. */
  readonly wake: () => void
  /** Resolves when no work is under way. */
  readonly drained: () => Promise<void>
}

/** What is left when work ends; the rest is tried again after a while. Work that fails leaves a rest. */
export type Rest = 'nothing-left' | 'rest-left'

const firstRetryMilliseconds = 1_000
const lastRetryMilliseconds = 15_000

/**
 * Work behind the screen that may fail and is tried again, after a longer time with each failure. `progressed`, called by
 * the work, makes that time short again. `ended` is called after each round of work.
 */
export const makeBehindScreen = (
  world: BehindScreenWorld,
  work: (progressed: () => void) => Promise<Rest>,
  ended: () => void,
): BehindScreen => {
  let running: Promise<void> | null = null
  let isCalledAgain = false
  let isRetrySet = false
  let failures = 0

  const progressed = () => {
    failures = 0
  }

  const tryLater = () => {
    if (isRetrySet) return
    isRetrySet = true
    const wait = Math.min(firstRetryMilliseconds * 2 ** failures, lastRetryMilliseconds)
    failures += 1
    world.retryAfter(wait, () => {
      isRetrySet = false
      wake()
    })
  }

  const wake = () => {
    if (running !== null) {
      isCalledAgain = true
      return
    }
    isCalledAgain = false
    let rest: Rest = 'rest-left'
    running = world
      .alone(async () => {
        rest = await work(progressed)
      })
      // A store that cannot be read is tried again like a server that does not answer.
      .catch(() => undefined)
      .then(() => {
        running = null
        ended()
        if (rest === 'rest-left') tryLater()
        if (isCalledAgain) wake()
      })
  }

  return { wake, drained: async () => running ?? undefined }
}
