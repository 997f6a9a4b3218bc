import type { PrismaClient } from '@bayledger/db/generated/client'

export const hasAnyShop = async (prisma: PrismaClient): Promise<boolean> =>
  (await prisma.shop.findFirst({ select: { id: true } })) !== null
