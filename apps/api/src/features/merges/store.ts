import type { Prisma } from '@bayledger/db/generated/client'
import type { Fields, MergeSubject } from './policy.ts'

export type Tx = Prisma.TransactionClient

export const isSubject = (text: string): text is MergeSubject => text === 'customer' || text === 'vehicle'

/** Both records, held until the transaction ends. They are locked in one order, whoever asks for which. */
export const lockRecords = async (
  tx: Tx,
  shopId: string,
  subject: MergeSubject,
  ids: readonly string[],
): Promise<void> => {
  for (const id of ids.toSorted())
    if (subject === 'customer')
      await tx.$queryRaw`select 1 from customers where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
    else
      await tx.$queryRaw`select 1 from vehicles where shop_id = ${shopId}::uuid and id = ${id}::uuid for update`
}

/** A record's own fields, its version, and whose record it was merged into; `null` where there is none. */
export const findRecord = async (
  tx: Tx,
  shopId: string,
  subject: MergeSubject,
  id: string,
): Promise<{ fields: Fields; survivorId: string | null; version: number; isErased: boolean } | null> => {
  const where = { shopId_id: { shopId, id } }
  if (subject === 'customer') {
    const row = await tx.customer.findUnique({ where })
    if (!row) return null
    const { name, phone, email, mayText, mayEmail, mayCall, language, survivorId, version } = row
    const fields = { name, phone, email, mayText, mayEmail, mayCall, language }
    return { fields, survivorId, version, isErased: row.erasedAt !== null }
  }
  const row = await tx.vehicle.findUnique({ where })
  if (!row) return null
  const { customerId, plate, plateRegion, vin, description, color, notes, sheetId, survivorId, version } = row
  const fields = { customerId, plate, plateRegion, vin, description, color, notes, sheetId }
  return { fields, survivorId, version, isErased: false }
}

export const updateRecord = async (
  tx: Tx,
  shopId: string,
  subject: MergeSubject,
  id: string,
  fields: object,
  at: Date,
): Promise<void> => {
  const change = {
    where: { shopId_id: { shopId, id } },
    data: { ...fields, version: { increment: 1 }, updatedAt: at },
  }
  if (subject === 'customer') await tx.customer.update(change)
  else await tx.vehicle.update(change)
}

/** What was merged into a record before goes with it. */
export const moveMerged = async (
  tx: Tx,
  shopId: string,
  subject: MergeSubject,
  from: string,
  to: string,
): Promise<void> => {
  const change = { where: { shopId, survivorId: from }, data: { survivorId: to } }
  if (subject === 'customer') await tx.customer.updateMany(change)
  else await tx.vehicle.updateMany(change)
}

/** What was merged into a record, also through others, leads to it again. */
export const giveBackMerged = async (
  tx: Tx,
  shopId: string,
  subject: MergeSubject,
  to: string,
): Promise<void> => {
  const holding = await tx.recordMerge.findMany({ where: { shopId, subject, undoneAt: null } })
  const below = new Set([to])
  for (let known = 0; known < below.size; ) {
    known = below.size
    for (const { mergedId, survivorId } of holding) if (below.has(survivorId)) below.add(mergedId)
  }
  below.delete(to)
  const change = { where: { shopId, id: { in: [...below] } }, data: { survivorId: to } }
  if (subject === 'customer') await tx.customer.updateMany(change)
  else await tx.vehicle.updateMany(change)
}

export const insertMerge = async (tx: Tx, merge: Prisma.RecordMergeUncheckedCreateInput): Promise<void> => {
  await tx.recordMerge.create({ data: merge })
}

export const markUndone = async (
  tx: Tx,
  shopId: string,
  id: string,
  undone: { undoneBy: string; undoneAt: Date },
): Promise<void> => {
  await tx.recordMerge.update({ where: { shopId_id: { shopId, id } }, data: undone })
}

const withPeople = { maker: { select: { name: true } }, undoer: { select: { name: true } } } as const

export const findMerge = (tx: Tx, shopId: string, id: string) =>
  tx.recordMerge.findUnique({ where: { shopId_id: { shopId, id } }, include: withPeople })

export type MergeRow = NonNullable<Awaited<ReturnType<typeof findMerge>>>

/** Every merge that one of these records took part in, newest first. */
export const listMerges = (tx: Tx, shopId: string, subject: MergeSubject, ids: readonly string[]) =>
  tx.recordMerge.findMany({
    where: {
      ...{ shopId, subject },
      OR: [{ mergedId: { in: [...ids] } }, { survivorId: { in: [...ids] } }],
    },
    include: withPeople,
    orderBy: { id: 'desc' },
  })

/** What each record is called: a customer by name, a vehicle by plate and description. */
export const listNames = async (
  tx: Tx,
  shopId: string,
  subject: MergeSubject,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> => {
  const where = { shopId, id: { in: [...ids] } }
  const rows =
    subject === 'customer'
      ? (await tx.customer.findMany({ where })).map(({ id, name }) => [id, name] as const)
      : (await tx.vehicle.findMany({ where })).map(
          ({ id, plate, description }) =>
            [id, plate === null ? description : `${plate} · ${description}`] as const,
        )
  return new Map(rows)
}
