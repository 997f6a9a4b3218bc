import { PlaceContent } from '@bayledger/contract/places'
import type { Location, Prisma } from '@bayledger/db/generated/client'
import type { Kept, RecordStore } from '../../core/record-versions.ts'

const keptOf = ({ id, version, ...row }: Location): Kept<PlaceContent> => ({
  id,
  version,
  content: PlaceContent.parse({
    name: row.name,
    address: row.address,
    hours: row.hours,
    bays: row.bays,
    altitudeFeet: row.altitudeFeet,
    timeZone: row.timeZone,
    lawProfile: row.lawProfile,
  }),
})

export const listPlaces = async (
  prisma: Pick<Prisma.TransactionClient, 'location'>,
  shopId: string,
): Promise<Kept<PlaceContent>[]> =>
  (await prisma.location.findMany({ where: { shopId }, orderBy: [{ name: 'asc' }, { id: 'asc' }] })).map(
    keptOf,
  )

export const findPlace = async (
  prisma: Pick<Prisma.TransactionClient, 'location'>,
  shopId: string,
  id: string,
): Promise<Kept<PlaceContent> | null> => {
  const row = await prisma.location.findUnique({ where: { shopId_id: { shopId, id } } })
  return row && keptOf(row)
}

/** Held until the transaction ends. */
export const lockNames = async (tx: Prisma.TransactionClient, shopId: string): Promise<void> => {
  await tx.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`${shopId}/places`}, 0))`
}

export const placeRecords: RecordStore<PlaceContent> = {
  subject: 'place',
  lock: async (tx, shopId, id) => {
    await tx.$queryRaw`select 1 from locations where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
    return findPlace(tx, shopId, id)
  },
  insert: async (tx, shopId, { id, version, content }) => {
    await tx.location.create({ data: { shopId, id, version, ...content } })
  },
  update: async (tx, shopId, { id, version, content }) => {
    await tx.location.update({ where: { shopId_id: { shopId, id } }, data: { version, ...content } })
  },
}
