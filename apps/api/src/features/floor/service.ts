import { Id, Instant } from '@bayledger/ledger/text'
import * as z from 'zod/mini'
import { fromCursor, toCursor } from '../../core/cursor.ts'
import type { Deps } from '../../deps.ts'
import { getReadyTimes } from './service/ready-times.ts'
import { listUndelivered } from './store/undelivered-estimates.ts'
import { type FloorRowStored, listFloorRows, pageSize } from './store.ts'

/** How long an order that ended stays on the list: a working day. */
const endedHours = 12

/** One page of the floor list from `cursor` on; `next` leads to the page after it, `null` on the last one. */
export const getFloorPage = async (
  deps: Deps,
  query: {
    readonly locationId?: string | undefined
    readonly cursor?: string | undefined
    readonly orders?: string | undefined
  },
) => {
  const now = deps.clock.now()
  // As it is before the rows are read: an order that is whole by then has ended in its row too.
  const loading = new Set(deps.loading)
  const place = fromCursor(query.cursor, z.tuple([Instant, Id]))
  const ready = await getReadyTimes(deps)
  const found = await listFloorRows(deps.pool, deps.shopId, {
    locationId: query.locationId ?? null,
    endedAfter: new Date(now.getTime() - endedHours * 3_600_000),
    orderIds: query.orders?.split(',') ?? null,
    after: place && { openedAt: place[0], orderId: place[1] },
  })
  const page = query.orders === undefined ? found.slice(0, pageSize) : found
  const last = page.at(-1)
  const waiting = page.filter(isUnanswered).map(({ orderId }) => orderId)
  return {
    asOf: now.toISOString(),
    rows: page.filter(({ orderId }) => !loading.has(orderId)),
    ready,
    undelivered: await listUndelivered(deps.pool, deps.shopId, waiting),
    next: found.length > page.length && last ? toCursor([last.openedAt.toISOString(), last.orderId]) : null,
  }
}

const isUnanswered = ({ isOpen, agenda }: FloorRowStored): boolean =>
  isOpen && agenda.some(({ moves }) => moves.some(({ code }) => code === 'estimate-unanswered'))
