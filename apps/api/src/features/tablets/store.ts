import type { TabletContent, TabletFacts } from '@bayledger/contract/tablets'
import type { Device, Prisma } from '@bayledger/db/generated/client'
import type { Pool } from 'pg'
import type { ChangedStore, Kept } from '../../core/record-versions.ts'

export type KeptTablet = Kept<TabletContent> & { readonly facts: TabletFacts }

type Row = {
  id: string
  version: number
  name: string
  locationId: string
  isOut: boolean
  enrolledAt: Date
  lastSeenAt: Date | null
  heldOrders: number
  refusedEntries: number
  unsentEntries: number | null
  unsentPhotos: number | null
  unsentToldAt: Date | null
}

/** The shop's tablets with what is known of each, those that are out last; `id`: one of them alone. */
export const listTablets = async (
  pool: Pool,
  shopId: string,
  id: string | null = null,
): Promise<KeptTablet[]> => {
  const { rows } = await pool.query<Row>({
    name: 'tablets',
    text: `select d.id, d.version, d.name, d.location_id as "locationId", d.revoked_at is not null as "isOut",
        d.enrolled_at as "enrolledAt", d.unsent_entries as "unsentEntries", d.unsent_photos as "unsentPhotos",
        d.unsent_told_at as "unsentToldAt",
        (select max(s.last_seen_at) from sessions s
          where s.shop_id = d.shop_id and s.device_id = d.id) as "lastSeenAt",
        (select count(*) from order_holders h join order_heads o on o.shop_id = h.shop_id and o.order_id = h.order_id
          where h.shop_id = d.shop_id and h.device_id = d.id and o.is_open)::int as "heldOrders",
        (select count(*) from refused_entries r
          where r.shop_id = d.shop_id and r.device_id = d.id and r.settled_at is null)::int as "refusedEntries"
      from devices d where d.shop_id = $1 and ($2::uuid is null or d.id = $2)
      order by d.revoked_at is not null, d.name, d.id`,
    values: [shopId, id],
  })
  return rows.map((row) => ({
    id: row.id,
    version: row.version,
    content: { name: row.name, locationId: row.locationId, isOut: row.isOut },
    facts: {
      enrolledAt: row.enrolledAt.toISOString(),
      lastSeenAt: row.lastSeenAt?.toISOString() ?? null,
      heldOrders: row.heldOrders,
      refusedEntries: row.refusedEntries,
      unsent: unsentOf(row),
    },
  }))
}

const unsentOf = ({ unsentEntries, unsentPhotos, unsentToldAt }: Row): TabletFacts['unsent'] =>
  unsentToldAt === null
    ? null
    : { entries: unsentEntries ?? 0, photos: unsentPhotos ?? 0, toldAt: unsentToldAt.toISOString() }

export const isPlace = async (pool: Pool, shopId: string, id: string): Promise<boolean> =>
  ((await pool.query('select 1 from locations where shop_id = $1 and id = $2', [shopId, id])).rowCount ?? 0) >
  0

const keptOf = ({ id, version, name, locationId, revokedAt }: Device): Kept<TabletContent> => ({
  id,
  version,
  content: { name, locationId, isOut: revokedAt !== null },
})

/** Putting a tablet out ends every session on it in the same transaction: nothing that it sends is taken from then on. */
export const tabletRecords: ChangedStore<TabletContent> = {
  subject: 'tablet',
  lock: async (tx, shopId, id) => {
    await tx.$queryRaw`select 1 from devices where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
    const row = await tx.device.findUnique({ where: { shopId_id: { shopId, id } } })
    return row && keptOf(row)
  },
  update: async (tx, shopId, { id, version, content: { name, locationId, isOut } }, at) => {
    await tx.device.update({ where: { shopId_id: { shopId, id } }, data: { version, name, locationId } })
    if (!isOut) return
    await tx.device.updateMany({ where: { shopId, id, revokedAt: null }, data: { revokedAt: at } })
    await tx.session.updateMany({ where: { shopId, deviceId: id, endedAt: null }, data: { endedAt: at } })
  },
}

/** The tablets as a file has them, with the id of each place by its name. */
export const listForCsv = async (from: Prisma.TransactionClient, shopId: string) => {
  const places = await from.location.findMany({ where: { shopId }, select: { id: true, name: true } })
  const devices = await from.device.findMany({
    where: { shopId },
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
  })
  return {
    places: new Map(places.map(({ id, name }) => [name, id])),
    tablets: devices.map((row) => ({ ...keptOf(row), enrolledAt: row.enrolledAt })),
  }
}
