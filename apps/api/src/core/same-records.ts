import type { Prisma } from '@bayledger/db/generated/client'

/** Every record of the customer or the vehicle that this one is, the surviving one first; none where there is no such record. */
export const listSameRecords = async (
  prisma: Pick<Prisma.TransactionClient, '$queryRaw'>,
  shopId: string,
  subject: 'customer' | 'vehicle',
  id: string,
): Promise<string[]> => {
  const rows =
    subject === 'customer'
      ? await prisma.$queryRaw<{ id: string }[]>`
          select same_customer(${shopId}::uuid, ${id}::uuid)::text as id`
      : await prisma.$queryRaw<{ id: string }[]>`
          select same_vehicle(${shopId}::uuid, ${id}::uuid)::text as id`
  return rows.map((row) => row.id)
}
