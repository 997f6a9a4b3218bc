import type { Prisma, PrismaClient } from '@bayledger/db/generated/client'

/** All that names one of these records of a customer, outside the entries of their orders. */
export const readRegisters = async (prisma: PrismaClient, shopId: string, customerIds: readonly string[]) => {
  const ids = [...customerIds]
  const ofOrder = { order: { customerId: { in: ids } } }
  const [customers, vehicles, choices, orders, messages, links, reports] = await Promise.all([
    prisma.customer.findMany({ where: { shopId, id: { in: ids } }, orderBy: { createdAt: 'asc' } }),
    prisma.vehicle.findMany({ where: { shopId, customerId: { in: ids } }, orderBy: { createdAt: 'asc' } }),
    prisma.messageChoice.findMany({ where: { shopId, customerId: { in: ids } }, orderBy: { madeAt: 'asc' } }),
    prisma.orderHead.findMany({
      where: { shopId, customerId: { in: ids } },
      select: { orderId: true, number: true, openedAt: true },
      orderBy: { openedAt: 'asc' },
    }),
    prisma.message.findMany({
      where: { shopId, ...ofOrder },
      include: { order: { select: { number: true } } },
      orderBy: { createdAt: 'asc' },
    }),
    prisma.customerLink.findMany({
      where: { shopId, ...ofOrder },
      include: { order: { select: { number: true } }, openings: true },
      orderBy: { createdAt: 'asc' },
    }),
    prisma.sealedReport.findMany({
      where: { shopId, ...ofOrder },
      select: { number: true, orderId: true, sealedAt: true },
      orderBy: [{ sealedAt: 'asc' }, { number: 'asc' }],
    }),
  ])
  return { customers, vehicles, choices, orders, messages, links, reports }
}

export type Registers = Awaited<ReturnType<typeof readRegisters>>

/**
 * Write-ups that were begun and hold one of these marks. A bare name is no mark here: somebody else may have the same, and a copy must
 * not hold another person.
 */
export const listDrafts = (prisma: PrismaClient, shopId: string, marks: readonly string[]) =>
  prisma.$queryRaw<{ body: unknown; updatedAt: Date }[]>`
    select body, updated_at as "updatedAt" from write_up_drafts
    where shop_id = ${shopId}::uuid and names_person(body, ${[...marks]}::text[]) order by updated_at`

/** Held until the transaction ends, so that two copies at once get two numbers. */
export const lockCustomer = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  customerId: string,
): Promise<void> => {
  await tx.$queryRaw`select 1 from customers where shop_id = ${shopId}::uuid and id = ${customerId}::uuid for update`
}
