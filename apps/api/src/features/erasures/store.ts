import { ErasedCounts } from '@bayledger/contract/erasures'
import type { Prisma } from '@bayledger/db/generated/client'

export type Tx = Prisma.TransactionClient

export type OrderOfPerson = {
  readonly orderId: string
  readonly number: string
  readonly isOpen: boolean
  readonly entries: number
}

/** The orders of a customer under each record of theirs; of one who was erased, those from until then. */
export const listOrders = (tx: Tx, shopId: string, customerId: string) =>
  tx.$queryRaw<OrderOfPerson[]>`
    select h.order_id::text as "orderId", h.number, h.is_open as "isOpen", h.seq as entries
    from rows_of_person(${shopId}::uuid, ${customerId}::uuid) as own
    join order_heads h on h.shop_id = ${shopId}::uuid and h.order_id = any (own.orders) order by h.opened_at`

export const listSealedReports = (tx: Tx, shopId: string, orderIds: readonly string[]) =>
  tx.$queryRaw<{ number: string; sha256: string; sealedAt: Date }[]>`
    select r.number, r.sha256, r.sealed_at as "sealedAt" from sealed_reports r
    join blobs b on b.shop_id = r.shop_id and b.sha256 = r.sha256
    where r.shop_id = ${shopId}::uuid and r.order_id = any (${[...orderIds]}::uuid[]) order by r.sealed_at`

/** Legal holds on a customer's records and orders that were not lifted. */
export const listHolding = (tx: Tx, shopId: string, subjectIds: readonly string[]) =>
  tx.legalHold.findMany({
    where: { shopId, subjectId: { in: [...subjectIds] }, liftedAt: null },
    orderBy: { placedAt: 'asc' },
  })

/** Tablets that are let in and have not dropped one of these orders. */
export const listTabletsWith = (tx: Tx, shopId: string, orderIds: readonly string[]) =>
  tx.$queryRaw<{ orderId: string; tablet: string }[]>`
    select h.order_id::text as "orderId", d.name as tablet from order_holders h
    join devices d on d.shop_id = h.shop_id and d.id = h.device_id and d.revoked_at is null
    where h.shop_id = ${shopId}::uuid and h.order_id = any (${[...orderIds]}::uuid[]) order by d.name`

/** How many things an erasure would take; `reports`: the digests of sealed reports whose time is over. */
export const countPerson = async (
  tx: Tx,
  shopId: string,
  customerId: string,
  reports: readonly string[],
): Promise<ErasedCounts> => {
  const [row] = await tx.$queryRaw<{ counts: unknown }[]>`
    select count_person(${shopId}::uuid, ${customerId}::uuid, ${[...reports]}::text[]) as counts`
  return ErasedCounts.parse(row?.counts)
}

export type NewErasure = {
  readonly erasureId: string
  readonly customerId: string
  readonly reports: readonly string[]
  readonly reason: string
  readonly identity: string | null
  readonly by: object
  readonly at: Date
}

/** Erases, and says what went; the database refuses while a hold or an open order is there. */
export const erasePerson = async (tx: Tx, shopId: string, erasure: NewErasure): Promise<ErasedCounts> => {
  const { erasureId, customerId, reports, reason, identity, by, at } = erasure
  const [row] = await tx.$queryRaw<{ counts: unknown }[]>`
    select erase_person(${shopId}::uuid, ${erasureId}::uuid, ${customerId}::uuid, ${[...reports]}::text[], ${reason},
      ${identity}, ${JSON.stringify(by)}::json, ${at}) as counts`
  return ErasedCounts.parse(row?.counts)
}

export const listErasures = (tx: Pick<Tx, 'erasure'>, shopId: string) =>
  tx.erasure.findMany({
    where: { shopId, customerId: { not: null } },
    orderBy: [{ erasedAt: 'desc' }, { id: 'desc' }],
    take: 200,
  })

export type ErasureRow = Awaited<ReturnType<typeof listErasures>>[number]

export const listNames = (tx: Pick<Tx, 'staff'>, shopId: string) =>
  tx.staff.findMany({ where: { shopId }, select: { id: true, name: true } })

export const listErasureIds = async (tx: Pick<Tx, 'erasure'>, shopId: string): Promise<string[]> => {
  const rows = await tx.erasure.findMany({
    where: { shopId, customerId: { not: null } },
    select: { id: true },
  })
  return rows.map(({ id }) => id)
}

/** People who were erased and of whom something is there again, or a report that was sealed before then. */
export const listErasedWithRest = async (tx: Tx, shopId: string, sealedBefore: Date): Promise<string[]> => {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    select distinct coalesce(c.survivor_id, c.id)::text as id from customers c
    join order_heads h on h.shop_id = c.shop_id and h.customer_id = c.id and h.opened_at <= c.erased_at and not h.is_open
    where c.shop_id = ${shopId}::uuid and c.erased_at is not null and (
      exists (select from personal_texts t where t.shop_id = h.shop_id and t.order_id = h.order_id)
      or exists (select from contact_sides t where t.shop_id = h.shop_id and t.order_id = h.order_id)
      or exists (select from shown_sides t where t.shop_id = h.shop_id and t.order_id = h.order_id)
      or exists (select from refused_entries t where t.shop_id = h.shop_id and t.order_id = h.order_id)
      or exists (select from messages t where t.shop_id = h.shop_id and t.order_id = h.order_id and t.recipient is not null)
      or exists (select from sealed_reports r join blobs b on b.shop_id = r.shop_id and b.sha256 = r.sha256
        where r.shop_id = h.shop_id and r.order_id = h.order_id and r.sealed_at <= ${sealedBefore}))
    order by 1`
  return rows.map(({ id }) => id)
}
