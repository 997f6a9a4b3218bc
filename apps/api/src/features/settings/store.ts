import type { PrismaClient } from '@bayledger/db/generated/client'

export const listInstruments = (prisma: PrismaClient, shopId: string) =>
  prisma.instrument.findMany({
    where: { shopId, kind: { in: ['gauge', 'wrench'] } },
    orderBy: { code: 'asc' },
  })

export type InstrumentRow = Awaited<ReturnType<typeof listInstruments>>[number]

/** The stock lists of all places, each part with the lots of its last ten deliveries that named one. */
export const listStock = (prisma: PrismaClient, shopId: string) =>
  prisma.stockItem.findMany({
    where: { shopId },
    orderBy: { partNumber: 'asc' },
    include: {
      changes: {
        where: { kind: { in: ['received', 'arrived'] }, lot: { not: null } },
        orderBy: { writtenAt: 'desc' },
        take: 10,
        select: { lot: true },
      },
    },
  })

export type StockRow = Awaited<ReturnType<typeof listStock>>[number]

export const findShop = (prisma: PrismaClient, shopId: string) =>
  prisma.shop.findUniqueOrThrow({
    where: { id: shopId },
    include: { locations: { orderBy: { name: 'asc' } } },
  })

export type LocationRow = Awaited<ReturnType<typeof findShop>>['locations'][number]

/** The newest version of each kind of setting that holds for the whole shop. */
export const listNewestSettings = (prisma: PrismaClient, shopId: string) =>
  prisma.settingVersion.findMany({
    where: { shopId, locationId: null },
    distinct: ['kind'],
    orderBy: [{ kind: 'asc' }, { version: 'desc' }],
  })
