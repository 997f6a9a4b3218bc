import type { Prisma, PrismaClient } from '@bayledger/db/generated/client'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'

/** The newest version of every sheet, in one query. */
export const listNewestSheets = (prisma: PrismaClient, shopId: string) =>
  prisma.sheetVersion.findMany({
    where: { shopId },
    distinct: ['sheetId'],
    orderBy: [{ sheetId: 'asc' }, { version: 'desc' }],
  })

export const listVersions = (prisma: PrismaClient, shopId: string, sheetId: string) =>
  prisma.sheetVersion.findMany({ where: { shopId, sheetId }, orderBy: { version: 'desc' } })

export type SheetRow = Awaited<ReturnType<typeof listVersions>>[number]

export const insertSheet = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  id: string,
): Promise<void> => {
  await tx.sheet.create({ data: { shopId, id } })
}

/** Holds the sheet's row until the transaction ends, so that two new versions cannot take one number. */
export const lockNewestVersion = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  sheetId: string,
): Promise<SheetRow | null> => {
  await tx.$queryRaw`select 1 from sheets where shop_id = ${shopId}::uuid and id = ${sheetId}::uuid for update`
  return tx.sheetVersion.findFirst({ where: { shopId, sheetId }, orderBy: { version: 'desc' } })
}

/** A sheet without its id and version, which its row has. */
export type SheetBody = Omit<SpecificationSheet, 'sheetId' | 'version'>

export const insertVersion = (
  tx: Prisma.TransactionClient,
  sheetId: string,
  version: number,
  body: SheetBody,
  by: { readonly shopId: string; readonly staffId: string; readonly at: Date },
) =>
  tx.sheetVersion.create({
    data: {
      shopId: by.shopId,
      sheetId,
      version,
      body: body as Prisma.InputJsonValue,
      createdBy: { kind: 'staff', staffId: by.staffId },
      createdAt: by.at,
    },
  })
