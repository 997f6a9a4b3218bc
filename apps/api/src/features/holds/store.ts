import type { Prisma } from '@bayledger/db/generated/client'

export type Tx = Prisma.TransactionClient

const withPeople = { placer: { select: { name: true } }, lifter: { select: { name: true } } } as const

/** Those that hold first, newest first. */
export const listHolds = async (tx: Pick<Tx, 'legalHold'>, shopId: string) => {
  const order = { placedAt: 'desc' } as const
  const [holding, lifted] = await Promise.all([
    tx.legalHold.findMany({ where: { shopId, liftedAt: null }, include: withPeople, orderBy: order }),
    tx.legalHold.findMany({
      where: { shopId, liftedAt: { not: null } },
      include: withPeople,
      orderBy: order,
      take: 100,
    }),
  ])
  return [...holding, ...lifted]
}

export const findHold = (tx: Pick<Tx, 'legalHold'>, shopId: string, id: string) =>
  tx.legalHold.findUnique({ where: { shopId_id: { shopId, id } }, include: withPeople })

export type HoldRow = NonNullable<Awaited<ReturnType<typeof findHold>>>

/** The customer's record, held until the transaction ends, so that nobody erases it meanwhile. */
export const lockCustomer = async (tx: Tx, shopId: string, id: string) => {
  const [row] = await tx.$queryRaw<{ erasedAt: Date | null }[]>`
    select erased_at as "erasedAt" from customers where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
  return row ?? null
}

export const findOrder = (tx: Tx, shopId: string, orderId: string) =>
  tx.orderHead.findUnique({ where: { shopId_orderId: { shopId, orderId } }, select: { customerId: true } })

export const insertHold = async (tx: Tx, hold: Prisma.LegalHoldUncheckedCreateInput): Promise<boolean> =>
  (await tx.legalHold.createMany({ data: [hold], skipDuplicates: true })).count === 1

/** `false` where it was lifted before. */
export const liftHold = async (
  tx: Pick<Tx, 'legalHold'>,
  shopId: string,
  id: string,
  lifted: { readonly liftedBy: string; readonly liftedAt: Date },
): Promise<boolean> =>
  (await tx.legalHold.updateMany({ where: { shopId, id, liftedAt: null }, data: lifted })).count === 1

/** What each customer and each order is called. */
export const listNames = async (
  tx: Pick<Tx, 'customer' | 'orderHead'>,
  shopId: string,
  ids: readonly string[],
): Promise<ReadonlyMap<string, { readonly name: string; readonly customerId: string }>> => {
  const [customers, orders] = await Promise.all([
    tx.customer.findMany({ where: { shopId, id: { in: [...ids] } } }),
    tx.orderHead.findMany({ where: { shopId, orderId: { in: [...ids] } } }),
  ])
  return new Map([
    ...customers.map(({ id, name }) => [id, { name, customerId: id }] as const),
    ...orders.map(({ orderId, number, customerId }) => [orderId, { name: number, customerId }] as const),
  ])
}
