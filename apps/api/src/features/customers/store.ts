import type { CustomerContent } from '@bayledger/contract/customers'
import type { Prisma } from '@bayledger/db/generated/client'
import type { CustomerLanguageCode } from '@bayledger/ledger/customer-language-code'

export type Tx = Pick<Prisma.TransactionClient, 'customer'>

export const findCustomer = (tx: Tx, shopId: string, id: string) =>
  tx.customer.findUnique({ where: { shopId_id: { shopId, id } } })

export type CustomerRow = NonNullable<Awaited<ReturnType<typeof findCustomer>>>

export const pageSize = 50

/** The record that this one is now: its own, or the one that it was merged into. */
export const findSurvivingCustomer = async (tx: Tx, shopId: string, id: string) => {
  const row = await findCustomer(tx, shopId, id)
  return row?.survivorId ? findCustomer(tx, shopId, row.survivorId) : row
}

/** By name; `after` is the last row of the page before. */
export const listCustomers = (tx: Tx, shopId: string, after: { name: string; id: string } | null) =>
  tx.customer.findMany({
    where: {
      ...{ shopId, survivorId: null, erasedAt: null },
      ...(after ? { OR: [{ name: { gt: after.name } }, { name: after.name, id: { gt: after.id } }] } : {}),
    },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    take: pageSize + 1,
  })

export const listCustomersById = (tx: Tx, shopId: string, ids: readonly string[]) =>
  tx.customer.findMany({
    where: { shopId, id: { in: [...ids] } },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })

export const insertCustomer = (tx: Tx, shopId: string, id: string, content: CustomerContent, at: Date) =>
  tx.customer.create({ data: { shopId, id, ...content, createdAt: at, updatedAt: at } })

/** Writes only over the version that was read; `null` when someone was first, or there is none. */
export const updateCustomer = async (
  tx: Tx,
  shopId: string,
  id: string,
  version: number,
  content: CustomerContent,
  at: Date,
): Promise<CustomerRow | null> => {
  const [row] = await tx.customer.updateManyAndReturn({
    where: { shopId, id, version, survivorId: null, erasedAt: null },
    data: { ...content, version: { increment: 1 }, updatedAt: at },
  })
  return row ?? null
}

export const updateLanguage = async (
  tx: Tx,
  shopId: string,
  id: string,
  language: CustomerLanguageCode,
  at: Date,
): Promise<void> => {
  await tx.customer.updateMany({
    where: { shopId, id, survivorId: null, language: { not: language } },
    data: { language, version: { increment: 1 }, updatedAt: at },
  })
}
