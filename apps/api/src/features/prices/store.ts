import type { Prisma } from '@bayledger/db/generated/client'
import type { PriceBook } from '@bayledger/reckoning/money/price-book'

type Tx = Prisma.TransactionClient

const ofShop = (shopId: string) => ({ shopId, kind: 'prices', locationId: null })

export const findNewest = (tx: Pick<Tx, 'settingVersion'>, shopId: string) =>
  tx.settingVersion.findFirst({ where: ofShop(shopId), orderBy: { version: 'desc' } })

/** Whether a person saved the newest version; the first one comes with the program. */
export const isSavedBySomebody = async (tx: Pick<Tx, 'settingVersion'>, shopId: string): Promise<boolean> => {
  const newest = await findNewest(tx, shopId)
  return (newest?.createdBy as { kind?: string } | undefined)?.kind === 'staff'
}

export const listVersions = (tx: Pick<Tx, 'settingVersion'>, shopId: string) =>
  tx.settingVersion.findMany({ where: ofShop(shopId), orderBy: { version: 'desc' } })

export const listNames = async (
  tx: Pick<Tx, 'staff'>,
  shopId: string,
): Promise<ReadonlyMap<string, string>> =>
  new Map((await tx.staff.findMany({ where: { shopId } })).map(({ id, name }) => [id, name]))

/** One writes at a time until the transaction ends. */
export const lockPrices = (tx: Tx, shopId: string) =>
  tx.$queryRaw`select 1 from shops where id = ${shopId}::uuid for update`

export const insertVersion = (
  tx: Tx,
  shopId: string,
  id: string,
  body: PriceBook,
  { staffId, at }: { readonly staffId: string; readonly at: Date },
) =>
  tx.settingVersion.create({
    data: {
      ...ofShop(shopId),
      id,
      version: body.version,
      body,
      createdBy: { kind: 'staff', staffId },
      createdAt: at,
    },
  })

/** Orders in work that an estimate was issued for. */
export const countOpenEstimates = async (tx: Pick<Tx, '$queryRaw'>, shopId: string): Promise<number> => {
  const [row] = await tx.$queryRaw<{ count: number }[]>`
    select count(*)::int as count from order_heads h where h.shop_id = ${shopId}::uuid and h.is_open
      and exists (select from entries e where e.shop_id = h.shop_id and e.order_id = h.order_id
        and e.kind = 'estimate.issued')`
  return row?.count ?? 0
}

/** The day now where the shop's first place is, as 2026-01-12. */
export const findToday = async (tx: Pick<Tx, 'location'>, shopId: string, now: Date): Promise<string> => {
  const place = await tx.location.findFirst({ where: { shopId }, orderBy: [{ name: 'asc' }, { id: 'asc' }] })
  return new Intl.DateTimeFormat('en-CA', { timeZone: place?.timeZone ?? 'UTC' }).format(now)
}
