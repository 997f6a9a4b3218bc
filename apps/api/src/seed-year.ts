import { setTimeout as wait } from 'node:timers/promises'
import { demoCalendar } from '../../../prisma/seeds/demo/calendar.ts'
import { tamberStreet } from '../../../prisma/seeds/demo/places.ts'
import { demoId } from '../../../prisma/seeds/demo/seeded.ts'
import {
  type YearOrder,
  yearOfOrders,
  yearOrderIds,
  yearOrders,
  yearWrenches,
} from '../../../prisma/seeds/year.ts'
import { noteLoaded, yearLoadedKind } from './demo-loaded.ts'
import { forShop, type Parts } from './deps.ts'
import { sealOrderReport } from './features/reports/service.ts'
import { appendLines, momentsOf } from './seed-shop.ts'

export type YearLoading = {
  readonly parts: Parts
  readonly shopId: string
  /** Holds the orders that are not whole yet, each until it is. */
  readonly loading: Set<string>
  /** Lends connections that do not wait for the disk at each commit. */
  readonly hastily: (parts: Parts, work: (hasty: Parts) => Promise<unknown>) => Promise<void>
  readonly say: (line: string) => void
  /** Loads what of the demo's day is left; it is done first, and to its end; `null`: nothing is. */
  readonly finishDay: (() => Promise<void>) | null
  /** Absent: all of them. */
  readonly most?: number
}

/** After each order the desk has its turn. */
const restMs = 25

/**
 * Loads the year before the demo's day behind the running service: every entry through the ledger, every report sealed. A load
 * that was broken off goes on where it was; one that was finished is not begun again (`yearLoadedKind`). `stop` ends after the order in hand.
 */
export const loadYear = (
  loading: YearLoading,
): { readonly done: Promise<void>; readonly stop: () => Promise<void> } => {
  let isStopped = false
  const done = load(loading, () => isStopped)
  return {
    done,
    stop: async () => {
      isStopped = true
      await done.catch(() => undefined)
    },
  }
}

const load = async (loading: YearLoading, isStopped: () => boolean): Promise<void> => {
  const { parts, shopId, say } = loading
  const began = Date.now()
  // Nobody is woken for an order of last year.
  const quiet: Parts = { ...parts, live: { ...parts.live, wrote: () => undefined } }
  let isWhole = false
  for (const orderId of yearOrderIds) loading.loading.add(orderId)
  await loading.finishDay?.()
  await loading.hastily(quiet, async (hasty) => {
    isWhole = await loadOrders(hasty, loading, isStopped)
  })
  if (!isWhole) return
  await noteLoaded(forShop(parts, shopId), yearLoadedKind)
  say(`The demo's year: ${yearOrders} orders, loaded in ${Math.round((Date.now() - began) / 1_000)} s.`)
}

/** Gives whether all are loaded. */
const loadOrders = async (
  parts: Parts,
  { shopId, loading, say, most = yearOrders }: YearLoading,
  isStopped: () => boolean,
): Promise<boolean> => {
  const shop = await parts.prisma.shop.findFirstOrThrow({ where: { id: shopId } })
  const calendar = demoCalendar(playsDemoNow(shop.createdAt))
  await parts.prisma.instrument.createMany({
    data: yearWrenches(calendar).map(({ dueOn, ...wrench }) => ({
      shopId,
      locationId: tamberStreet.id,
      ...wrench,
      dueOn: dueOn === null ? null : new Date(dueOn),
    })),
    skipDuplicates: true,
  })
  let loaded = 0
  for (const order of yearOfOrders(calendar)) {
    if (loaded >= most) return false
    if (isStopped()) {
      say(`The demo's year: stopped after ${loaded} of ${yearOrders} orders. The next start goes on.`)
      return false
    }
    await loadOrder(parts, shopId, order)
    loading.delete(order.orderId)
    loaded += 1
    if (loaded % 50 === 0 && loaded < yearOrders) say(`The demo's year: ${loaded} of ${yearOrders} orders.`)
    await wait(restMs)
  }
  return true
}

/** The demo's shop was made at its six in the morning; its calendar is counted from 11:40. */
const playsDemoNow = (createdAt: Date): string =>
  new Date(createdAt.getTime() + (5 * 60 + 40) * 60_000).toISOString()

const loadOrder = async (parts: Parts, shopId: string, order: YearOrder): Promise<void> => {
  const { prisma } = parts
  const { orderId, lines, end, customer, vehicle } = order
  const at = momentsOf(parts, shopId)
  const there = await prisma.entry.count({ where: { shopId, orderId } })
  if (!end || there > lines.length + 1) return
  const createdAt = lines[0]?.receivedAt ?? end.sealedAt
  await prisma.customer.createMany({ data: { shopId, ...customer, createdAt }, skipDuplicates: true })
  await prisma.vehicle.createMany({ data: { shopId, ...vehicle, createdAt }, skipDuplicates: true })
  await appendLines(at, lines.slice(there))
  await sealOrderReport(at(end.sealedAt), {
    orderId,
    entryId: demoId(`sealed/${order.number}`),
    staffId: end.sealedBy,
  })
  await appendLines(at, [end.handBack])
}
