import type { OpenStretch } from './open-hours.ts'
import type { Judged } from './ready-error.ts'
import { readyTime, type StepCounts, secondsOfSteps } from './ready-time.ts'
import { type LearnedSeconds, learnSeconds, type StepTime } from './step-seconds.ts'

/** An order that is over, as its estimate is replayed. Times in milliseconds since 1970. */
export type PastOrder = {
  readonly endedAt: number
  readonly steps: readonly StepTime[]
  /** When the customer said Yes last, with what was to be done then and the part that was waited for. */
  readonly authorized: {
    readonly at: number
    readonly steps: StepCounts
    readonly partAt: number | null
  } | null
  readonly readyAt: number | null
}

/** After so many more orders what steps take is learned again. Our choice, no source. */
const learnEvery = 10

/** As many as the floor learns from. */
const learnedFrom = 300

/**
 * What would have been said when each customer had said Yes, from nothing that was not known then, and what became of it. Who
 * was present and what was ahead is not on record: the estimate is that of a vehicle that is begun at once. An order without
 * work, or whose Yes came after its last step, has none.
 *
 * @units Milliseconds since 1970.
 * @source This program's own measure.
 */
export const replayEstimates = <Order extends PastOrder>(
  orders: readonly Order[],
  openFrom: (from: number) => readonly OpenStretch[],
): readonly (Judged & { readonly order: Order })[] => {
  const byEnd = orders.toSorted((one, other) => one.endedAt - other.endedAt)
  const byYes = orders
    .flatMap((order) => (order.authorized === null ? [] : [{ order, authorized: order.authorized }]))
    .toSorted((one, other) => one.authorized.at - other.authorized.at)
  let ended = 0
  let learnedAt = -learnEvery
  let learned: LearnedSeconds = {}
  return byYes.flatMap(({ order, authorized }) => {
    while ((byEnd[ended]?.endedAt ?? Number.POSITIVE_INFINITY) <= authorized.at) ended += 1
    if (ended - learnedAt >= learnEvery) {
      const known = byEnd.slice(Math.max(0, ended - learnedFrom), ended)
      learned = learnSeconds(known.toReversed().flatMap(({ steps }) => steps.toReversed()))
      learnedAt = ended
    }
    if (order.readyAt === null || order.readyAt <= authorized.at) return []
    const estimate = readyTime({
      now: authorized.at,
      workSeconds: secondsOfSteps(authorized.steps, learned),
      aheadSeconds: 0,
      waitsUntil: null,
      partAt: authorized.partAt,
      open: openFrom(authorized.at),
    })
    return estimate?.is === 'about' ? [{ order, estimated: estimate.at, wasReady: order.readyAt }] : []
  })
}
