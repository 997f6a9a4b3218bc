import type { QueryOf } from '@bayledger/contract/endpoint'
import type { getNumbers as endpoint } from '@bayledger/contract/numbers'
import { type OpenStretch, openStretches, type WeekHours } from '@bayledger/reckoning/ready/open-hours'
import { readyError } from '@bayledger/reckoning/ready/ready-error'
import { replayEstimates } from '@bayledger/reckoning/ready/replay-estimates'
import { instantOf } from '@bayledger/reckoning/ready/zoned-time'
import { dayOf } from '@bayledger/report/compose/figures'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { getSettings } from '../settings/service.ts'
import { type FailedWithPast, presentPictures } from './present.ts'
import * as store from './store.ts'

const dayMs = 86_400_000

/** As many orders before the range as the floor would have learned from. */
const knownBefore = 300

/** What the orders of a range of days tell their owner. */
export const getNumbers = async (deps: Deps, { from, until, locationId }: QueryOf<typeof endpoint>) => {
  const { shop } = await getSettings(deps)
  const places = shop.locations
  const place = locationId === undefined ? places[0] : places.find(({ id }) => id === locationId)
  if (!place) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'place' })
  const { timeZone } = place
  const at = (day: string): Date => new Date(instantOf(day, '00:00', timeZone) ?? 0)
  const asked = { shopId: deps.shopId, locationId: locationId ?? null }
  const begins = at(from)
  const [orders, before] = await Promise.all([
    // The day after the last one, by the calendar and not by 24 hours.
    store.listEnded(deps.pool, { ...asked, from: begins, until: at(dayAfter(until)) }),
    store.listEndedBefore(deps.pool, { ...asked, before: begins, count: knownBefore }),
  ])
  const judged = judge(orders, before, places)
  return {
    orders: orders.map(({ orderId, number, endedAt }) => ({
      ...{ orderId, number },
      endedOn: dayOf(endedAt.toISOString(), timeZone),
    })),
    pictures: presentPictures(orders, await failedWithPast(deps, orders), judged),
    readyError: readyError(judged),
  }
}

const dayAfter = (day: string): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + dayMs).toISOString().slice(0, 10)

/** What was said of each order when its customer had said Yes, place by place, and what became of it. */
const judge = (
  orders: readonly store.EndedOrder[],
  before: readonly store.EndedOrder[],
  places: readonly { readonly id: string; readonly timeZone: string; readonly hours: unknown }[],
) => {
  const wanted = new Set(orders.map(({ orderId }) => orderId))
  return places.flatMap(({ id, timeZone, hours }) => {
    const own = [...orders, ...before].filter((order) => order.locationId === id).map(pastOrder)
    return replayEstimates(own, openFrom(hours as WeekHours, timeZone)).flatMap(({ order, ...times }) =>
      wanted.has(order.orderId) ? [{ ...times, orderId: order.orderId }] : [],
    )
  })
}

const pastOrder = ({ orderId, endedAt, figures }: store.EndedOrder) => ({
  orderId,
  endedAt: endedAt.getTime(),
  steps: figures.steps,
  authorized: figures.authorized && {
    at: Date.parse(figures.authorized.at),
    steps: figures.authorized.steps,
    partAt: figures.authorized.partAt === null ? null : Date.parse(figures.authorized.partAt),
  },
  readyAt: figures.readyAt === null ? null : Date.parse(figures.readyAt),
})

/** The open hours from an instant on, computed once a day: those of a day hold for every instant of it. */
const openFrom = (hours: WeekHours, timeZone: string) => {
  const known = new Map<number, readonly OpenStretch[]>()
  return (from: number): readonly OpenStretch[] => {
    const day = Math.floor(from / dayMs)
    const open = known.get(day) ?? openStretches(hours, timeZone, day * dayMs)
    known.set(day, open)
    return open
  }
}

/** Each failed sensor with what is known of its fitting here: its lot, and how old it was. */
const failedWithPast = async (
  { pool, shopId }: Deps,
  orders: readonly store.EndedOrder[],
): Promise<FailedWithPast[]> => {
  const failed = orders.flatMap(({ orderId, endedAt, figures }) =>
    figures.failed.map((one) => ({ ...one, orderId, endedAt })),
  )
  const ids = [...new Set(failed.flatMap(({ sensorId }) => sensorId ?? []))]
  const fittings = await store.listFittedIn(pool, shopId, ids)
  return failed.map(({ orderId, endedAt, sensorId, ageMonths }) => {
    const fitting = fittings
      .filter((one) => one.sensorId === sensorId && one.endedAt !== null && one.endedAt < endedAt)
      .toSorted((one, other) => Number(other.endedAt) - Number(one.endedAt))[0]
    const fitted = fitting?.figures?.fitted.find((one) => one.sensorId === sensorId)
    const made = fitted?.madeMonth ? Date.parse(`${fitted.madeMonth}-01T00:00:00Z`) : null
    const since = made ?? fitting?.endedAt?.getTime() ?? null
    return {
      orderId,
      isOurs: fitting !== undefined,
      lot: fitted?.lot ?? null,
      ageMonths: since === null ? ageMonths : Math.floor((endedAt.getTime() - since) / (30.44 * dayMs)),
    }
  })
}
