/** An order whose work is to be done at a place. */
export type WaitingJob = {
  readonly orderId: string
  readonly workSeconds: number
  /** Somebody has begun on it: it waits for nobody. */
  readonly begun: boolean
}

type InTurn = {
  readonly ahead: ReadonlyMap<string, number>
  /** When each person present is done with all that is theirs. */
  readonly freeAt: readonly number[]
}

const takeInTurn = (jobs: readonly WaitingJob[], peoplePresent: number): InTurn => {
  const freeAt = Array.from({ length: Math.max(1, peoplePresent) }, () => 0)
  const first = () => freeAt.indexOf(Math.min(...freeAt))
  const ahead = new Map<string, number>()
  const inTurn = [...jobs.filter(({ begun }) => begun), ...jobs.filter(({ begun }) => !begun)]
  for (const { orderId, workSeconds, begun } of inTurn) {
    const person = first()
    ahead.set(orderId, begun ? 0 : (freeAt[person] ?? 0))
    freeAt[person] = (freeAt[person] ?? 0) + workSeconds
  }
  return { ahead, freeAt }
}

/**
 * How long each order waits before somebody begins: everyone takes the next one when they are done with theirs. Orders that
 * were begun go on, whoever works on them; `jobs` is in the order in which the others are taken.
 *
 * @formula each job begins when the first of the people present is free
 * @units Seconds of work ahead of each order.
 * @source This program's own rule; at least one person is taken to be present.
 */
export const secondsAhead = (
  jobs: readonly WaitingJob[],
  peoplePresent: number,
): ReadonlyMap<string, number> => takeInTurn(jobs, peoplePresent).ahead

/**
 * How long an order waits of which nobody knew when the others were put in turn: it comes after them.
 *
 * @formula when the first of the people present is done with all of `jobs`
 * @units Seconds of work.
 * @source This program's own rule; at least one person is taken to be present.
 */
export const secondsAheadOfNext = (jobs: readonly WaitingJob[], peoplePresent: number): number =>
  Math.min(...takeInTurn(jobs, peoplePresent).freeAt)
