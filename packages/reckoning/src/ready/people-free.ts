/** An order whose work is to be done at a place. */
export type WaitingJob = {
  readonly orderId: string
  readonly workSeconds: number
  /** Somebody has begun on it: it waits for nobody. */
  readonly begun: boolean
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
): ReadonlyMap<string, number> => {
  const freeAt = Array.from({ length: Math.max(1, peoplePresent) }, () => 0)
  const first = () => freeAt.indexOf(Math.min(...freeAt))
  const ahead = new Map<string, number>()
  const inTurn = [...jobs.filter(({ begun }) => begun), ...jobs.filter(({ begun }) => !begun)]
  for (const { orderId, workSeconds, begun } of inTurn) {
    const person = first()
    ahead.set(orderId, begun ? 0 : (freeAt[person] ?? 0))
    freeAt[person] = (freeAt[person] ?? 0) + workSeconds
  }
  return ahead
}
