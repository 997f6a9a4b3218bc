import type { ErasureObstacle } from '@bayledger/contract/erasures'
import type { OrderOfPerson } from './store.ts'

/** Reports sealed for longer than the law's time, and the others with the day on which it is over. */
export const reportsByTime = <Report extends { readonly sealedAt: Date }>(
  reports: readonly Report[],
  until: (sealedAt: Date) => Date,
  now: Date,
): { readonly due: readonly Report[]; readonly kept: readonly (Report & { readonly until: Date })[] } => {
  const dated = reports.map((report) => ({ ...report, until: until(report.sealedAt) }))
  return { due: dated.filter((one) => one.until <= now), kept: dated.filter((one) => one.until > now) }
}

/** What is in the way of an erasure, holds first. */
export const obstaclesOf = (found: {
  readonly orders: readonly OrderOfPerson[]
  readonly holding: readonly { readonly subjectId: string; readonly reason: string }[]
  readonly owed: readonly { readonly orderId: string; readonly cents: number }[]
  readonly onTablets: readonly { readonly orderId: string; readonly tablet: string }[]
}): ErasureObstacle[] => {
  const numbers = new Map(found.orders.map(({ orderId, number }) => [orderId, number]))
  const order = (id: string) => numbers.get(id) ?? id
  return [
    ...found.holding.map(({ subjectId, reason }) => ({
      why: 'held' as const,
      order: numbers.get(subjectId) ?? null,
      reason,
    })),
    ...found.orders.flatMap(({ number, isOpen }) =>
      isOpen ? [{ why: 'open' as const, order: number }] : [],
    ),
    ...found.owed.map(({ orderId, cents }) => ({ why: 'owed' as const, order: order(orderId), cents })),
    ...found.onTablets.map(({ orderId, tablet }) => ({
      why: 'on-tablet' as const,
      order: order(orderId),
      tablet,
    })),
  ]
}
