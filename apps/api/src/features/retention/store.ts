import { PastCounts, type RetentionContent } from '@bayledger/contract/retention'
import type { Prisma } from '@bayledger/db/generated/client'

type Tx = Pick<Prisma.TransactionClient, '$queryRaw'>

export const countPast = async (
  tx: Tx,
  shopId: string,
  at: Date,
  times: RetentionContent,
): Promise<PastCounts> => {
  const [row] = await tx.$queryRaw<{ counts: unknown }[]>`
    select count_past(${shopId}::uuid, ${at}, ${JSON.stringify(times)}::json) as counts`
  return PastCounts.parse(row?.counts)
}

export const forgetPast = async (
  tx: Tx,
  shopId: string,
  at: Date,
  times: RetentionContent,
): Promise<PastCounts> => {
  const [row] = await tx.$queryRaw<{ counts: unknown }[]>`
    select forget_past(${shopId}::uuid, ${at}, ${JSON.stringify(times)}::json) as counts`
  return PastCounts.parse(row?.counts)
}

export type IdleCustomer = {
  readonly customerId: string
  readonly name: string
  readonly lastAt: Date
  readonly held: boolean
}

const most = 50

/** Customers without an open order of whom nothing was written since, under any record of theirs, longest ago first. */
export const listIdleCustomers = (tx: Tx, shopId: string, before: Date) =>
  tx.$queryRaw<IdleCustomer[]>`
    select own.id::text as "customerId", own.name, max(greatest(c.updated_at, h.updated_at)) as "lastAt",
      exists (select from legal_holds l where l.shop_id = own.shop_id and l.lifted_at is null
        and (l.subject_id = any (array_agg(c.id)) or l.subject_id = any (array_agg(h.order_id)))) as held
    from customers own
    join customers c on c.shop_id = own.shop_id and coalesce(c.survivor_id, c.id) = own.id
    left join order_heads h on h.shop_id = c.shop_id and h.customer_id = c.id
    where own.shop_id = ${shopId}::uuid and own.survivor_id is null and own.erased_at is null and own.updated_at < ${before}
    group by own.shop_id, own.id, own.name
    having max(greatest(c.updated_at, h.updated_at)) < ${before} and not coalesce(bool_or(h.is_open), false)
    order by held, "lastAt", own.id limit ${most}`
