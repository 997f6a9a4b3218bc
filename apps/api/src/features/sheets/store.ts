import type { Prisma, PrismaClient } from '@bayledger/db/generated/client'
import type { SpecificationSheet } from '@bayledger/reckoning/sheet'

/** The newest version of every sheet, in one query. */
export const listNewestSheets = (prisma: Prisma.TransactionClient, shopId: string) =>
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

/** Holds all sheets of a shop until the transaction ends, so that what was previewed is what changes. */
export const lockSheets = async (tx: Prisma.TransactionClient, shopId: string): Promise<void> => {
  await tx.$queryRaw`select 1 from sheets where shop_id = ${shopId}::uuid for update`
}

export const insertSheets = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  ids: readonly string[],
): Promise<void> => {
  await tx.sheet.createMany({ data: ids.map((id) => ({ shopId, id })) })
}

export const insertVersions = async (
  tx: Prisma.TransactionClient,
  versions: readonly NewVersion[],
  by: Writer,
): Promise<void> => {
  await tx.sheetVersion.createMany({ data: versions.map((version) => columnsOf(version, by)) })
}

type NewVersion = { readonly sheetId: string; readonly version: number; readonly body: SheetBody }
type Writer = { readonly shopId: string; readonly staffId: string; readonly at: Date }

const columnsOf = ({ sheetId, version, body }: NewVersion, { shopId, staffId, at }: Writer) => ({
  shopId,
  sheetId,
  version,
  body: body as Prisma.InputJsonValue,
  createdBy: { kind: 'staff', staffId },
  createdAt: at,
})

/** A sheet without its id and version, which its row has. */
export type SheetBody = Omit<SpecificationSheet, 'sheetId' | 'version'>

export const insertVersion = (
  tx: Prisma.TransactionClient,
  sheetId: string,
  version: number,
  body: SheetBody,
  by: Writer,
) => tx.sheetVersion.create({ data: columnsOf({ sheetId, version, body }, by) })

export type SheetOrderRow = {
  readonly orderId: string
  readonly number: string
  readonly vehicle: string
  readonly customer: string
  readonly phone: string | null
  readonly version: number
  readonly openedAt: Date
}

/**
 * The orders of vehicles of this kind that used the sheet: the newest choice of an order counts. A telephone number only of
 * who agreed to be called.
 */
export const listOrders = (prisma: PrismaClient, shopId: string, sheetId: string) =>
  prisma.$queryRaw<SheetOrderRow[]>`
    select h.order_id as "orderId", h.number, v.description as vehicle, c.name as customer,
      case when c.may_call then c.phone end as phone,
      chosen.version, h.opened_at as "openedAt"
    from vehicles v
    join order_heads h on h.shop_id = v.shop_id and h.vehicle_id = v.id
    join customers c on c.shop_id = h.shop_id and c.id = h.customer_id
    cross join lateral (
      select (e.payload -> 'sheet' ->> 'version')::int as version
      from entries e
      where e.shop_id = h.shop_id and e.order_id = h.order_id and e.kind = 'sheet.chosen'
        and e.payload -> 'sheet' ->> 'sheetId' = ${sheetId}
      order by e.seq desc
      limit 1
    ) chosen
    where v.shop_id = ${shopId}::uuid and v.sheet_id = ${sheetId}::uuid
    order by h.opened_at desc, h.order_id
    limit 500`
