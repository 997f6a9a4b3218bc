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
 * The orders that used the sheet, whether or not their vehicle is linked to it: the newest choice of an order counts. A
 * telephone number only of who agreed to be called.
 */
export const listOrders = (prisma: PrismaClient, shopId: string, sheetId: string) =>
  prisma.$queryRaw<SheetOrderRow[]>`
    select h.order_id as "orderId", h.number, v.description as vehicle, c.name as customer,
      case when c.may_call then c.phone end as phone,
      chosen.version, h.opened_at as "openedAt"
    from (
      select distinct on (e.order_id) e.order_id, (e.payload -> 'sheet' ->> 'version')::int as version
      from entries e
      where e.shop_id = ${shopId}::uuid and e.kind = 'sheet.chosen'
        and (e.payload -> 'sheet') ->> 'sheetId' = ${sheetId}
      order by e.order_id, e.seq desc
    ) chosen
    join order_heads h on h.shop_id = ${shopId}::uuid and h.order_id = chosen.order_id
    join vehicles brought on brought.shop_id = h.shop_id and brought.id = h.vehicle_id
    join vehicles v on v.shop_id = h.shop_id and v.id = coalesce(brought.survivor_id, brought.id)
    join customers named on named.shop_id = h.shop_id and named.id = h.customer_id
    join customers c on c.shop_id = h.shop_id and c.id = coalesce(named.survivor_id, named.id)
    order by h.opened_at desc, h.order_id
    limit 500`

/**
 * Links the vehicles on file whose kind has this sheet's very name and that have no sheet yet. A similar name is proposed to a
 * person, never linked by itself.
 */
export const linkVehicles = async (
  tx: Prisma.TransactionClient,
  shopId: string,
  sheets: readonly { readonly sheetId: string; readonly name: string }[],
  at: Date,
): Promise<void> => {
  await tx.$executeRaw`
    update vehicles v set sheet_id = s."sheetId", version = v.version + 1, updated_at = ${at}
    from json_to_recordset(${JSON.stringify(sheets)}::json) as s("sheetId" uuid, name text)
    where v.shop_id = ${shopId}::uuid and v.sheet_id is null
      and lower(btrim(v.description)) = lower(btrim(s.name))`
}
