import type { LeftToDo } from '@bayledger/ledger/questions/left-to-do'
import { type OpenStretch, openStretches } from '@bayledger/reckoning/ready/open-hours'
import { secondsAhead, secondsAheadOfNext } from '@bayledger/reckoning/ready/people-free'
import { promiseSlips } from '@bayledger/reckoning/ready/promise-slips'
import { type ReadyTime, readyTime, secondsOfSteps } from '@bayledger/reckoning/ready/ready-time'
import { type LearnedSeconds, learnSeconds } from '@bayledger/reckoning/ready/step-seconds'
import type { Pool } from 'pg'
import type { Deps } from '../../../deps.ts'
import { listStepTimes, readPlacesAndJobs } from '../store/ready-basis.ts'

export type AskedOrder = {
  readonly orderId: string
  readonly locationId: string
  readonly promisedAt: Date | null
  readonly left: LeftToDo | null
}

/** What is known of an order's readiness. `slips`: the customer has to hear of a later time. */
export type Readiness = { readonly ready: ReadyTime; readonly slips: boolean }

/** The readiness of one order; `null` before there is a plan, once it is done, and where two weeks are not enough. */
export type ReadyTimes = (order: AskedOrder) => Readiness | null

type PlaceKept = {
  readonly open: readonly OpenStretch[]
  readonly learned: LearnedSeconds
  /** Of an order that came after this was read. */
  readonly aheadOfNext: number
}

/** What a process keeps of one shop, so that the floor's page costs no more queries than it did. */
type Kept = {
  basis: {
    readonly readAt: number
    readonly places: ReadonlyMap<string, PlaceKept>
    readonly ahead: ReadonlyMap<string, number>
  } | null
  learned: { readonly readAt: number; readonly byPlace: ReadonlyMap<string, LearnedSeconds> } | null
  reading: Promise<void> | null
  /** Orders whose promise slipped when they were looked at last. */
  readonly slipped: Set<string>
}

/** Who is present and what is ahead is read again after this, behind the page that found it old. */
const freshMs = 15_000

/** After this a page waits for it. */
const oldMs = 2 * 60_000

/** What steps take is learned again after this. */
const learnEveryMs = 10 * 60_000

const memories = new WeakMap<Pool, Map<string, Kept>>()

const keptOf = ({ pool, shopId }: Deps): Kept => {
  const shops = memories.get(pool) ?? new Map<string, Kept>()
  memories.set(pool, shops)
  const kept = shops.get(shopId) ?? { basis: null, learned: null, reading: null, slipped: new Set() }
  shops.set(shopId, kept)
  return kept
}

const isWithin = (readAt: number, now: number, ms: number): boolean => now >= readAt && now - readAt < ms

/** How ready times are computed now: what is left of an order is its own newest, what is ahead of it some seconds old. */
export const getReadyTimes = async (deps: Deps): Promise<ReadyTimes> => {
  const kept = keptOf(deps)
  const now = deps.clock.now().getTime()
  if (!kept.basis || !isWithin(kept.basis.readAt, now, freshMs)) {
    const reading = kept.reading ?? startReading(deps, kept)
    if (!kept.basis || !isWithin(kept.basis.readAt, now, oldMs)) await reading
    // The next page tries again; this one has what was read before.
    else reading.catch(() => undefined)
  }
  const { basis, slipped } = kept
  if (!basis) throw new Error('ready times were not read')
  return (order) => {
    const { left, orderId } = order
    const place = basis.places.get(order.locationId)
    if (!left || !place || Object.keys(left.steps).length === 0) return null
    const ready = readyTime({
      now,
      workSeconds: secondsOfSteps(left.steps, place.learned),
      aheadSeconds: left.begun ? 0 : (basis.ahead.get(orderId) ?? place.aheadOfNext),
      waitsUntil: left.waitsUntil === null ? null : Date.parse(left.waitsUntil),
      partAt: left.partAt === null ? null : Date.parse(left.partAt),
      open: place.open,
    })
    if (!ready) return null
    const slips =
      ready.is === 'about' &&
      order.promisedAt !== null &&
      promiseSlips({
        readyAt: ready.at,
        promisedAt: order.promisedAt.getTime(),
        slipped: slipped.has(orderId),
      })
    if (slips) slipped.add(orderId)
    else slipped.delete(orderId)
    return { ready, slips }
  }
}

const startReading = (deps: Deps, kept: Kept): Promise<void> => {
  const reading = read(deps, kept).finally(() => {
    kept.reading = null
  })
  kept.reading = reading
  return reading
}

const read = async ({ pool, shopId, clock, ...deps }: Deps, kept: Kept): Promise<void> => {
  const loading = new Set(deps.loading)
  const now = clock.now()
  const readAt = now.getTime()
  if (!kept.learned || !isWithin(kept.learned.readAt, readAt, learnEveryMs))
    kept.learned = { readAt, byPlace: learnByPlace(await listStepTimes(pool, shopId)) }
  const { byPlace } = kept.learned
  const { places, jobs } = await readPlacesAndJobs(pool, shopId, now)
  const inTurn = places.map((place) => {
    const learned = byPlace.get(place.locationId) ?? {}
    const own = jobs.filter((job) => job.locationId === place.locationId && !loading.has(job.orderId))
    const waiting = own.map(({ orderId, left }) => ({
      orderId,
      workSeconds: secondsOfSteps(left.steps, learned),
      begun: left.begun,
    }))
    return { ...place, learned, waiting }
  })
  kept.basis = {
    readAt,
    places: new Map(
      inTurn.map(({ locationId, hours, timeZone, learned, waiting, people }) => [
        locationId,
        {
          open: openStretches(hours, timeZone, readAt),
          learned,
          aheadOfNext: secondsAheadOfNext(waiting, people),
        },
      ]),
    ),
    ahead: new Map(inTurn.flatMap(({ waiting, people }) => [...secondsAhead(waiting, people)])),
  }
}

const learnByPlace = (
  orders: Awaited<ReturnType<typeof listStepTimes>>,
): ReadonlyMap<string, LearnedSeconds> => {
  const byPlace = Map.groupBy(orders, ({ locationId }) => locationId)
  return new Map(
    [...byPlace].map(([locationId, own]) => [
      locationId,
      // Newest first, within an order too.
      learnSeconds(own.flatMap(({ steps }) => steps.toReversed())),
    ]),
  )
}
