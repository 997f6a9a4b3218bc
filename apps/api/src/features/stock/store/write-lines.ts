import type { StockContent } from '@bayledger/contract/stock'
import type { Prisma } from '@bayledger/db/generated/client'
import { v7 as newId } from 'uuid'
import { contentOf, familyOf } from '../../../core/part-family.ts'
import type { Kept } from '../../../core/record-versions.ts'

export type Tx = Prisma.TransactionClient

/** A line as it is stored, for an import. */
export type StockLine = Kept<StockContent> & { readonly onHand: number }

/** The id of each place by its name. */
export const listPlaceNames = async (
  tx: Pick<Tx, 'location'>,
  shopId: string,
): Promise<Map<string, string>> =>
  new Map((await tx.location.findMany({ where: { shopId } })).map(({ id, name }) => [name, id]))

export const listLines = async (tx: Pick<Tx, 'stockItem'>, shopId: string): Promise<StockLine[]> =>
  (
    await tx.stockItem.findMany({ where: { shopId }, orderBy: [{ partNumber: 'asc' }, { id: 'asc' }] })
  ).flatMap(({ id, version, partNumber, locationId, family, onHand }) => {
    const content = contentOf(family)
    return content === null ? [] : [{ id, version, onHand, content: { partNumber, locationId, ...content } }]
  })

/** Holds all lines of a shop until the transaction ends, so that what was previewed is what changes. */
export const lockLines = (tx: Tx, shopId: string) =>
  tx.$queryRaw`select 1 from stock_items where shop_id = ${shopId}::uuid order by id for update`

type NewLine = Kept<StockContent> & { readonly counted: number }

/**
 * Writes new lines, changed ones with what they were where their history does not have it yet, and what was counted, in a
 * few statements however many lines there are.
 */
export const writeLines = async (
  tx: Tx,
  shopId: string,
  {
    added,
    changed,
  }: {
    readonly added: readonly NewLine[]
    readonly changed: readonly (NewLine & { readonly before: StockLine })[]
  },
  { staffId, at }: { readonly staffId: string; readonly at: Date },
): Promise<void> => {
  const by = { kind: 'staff', staffId }
  await tx.stockItem.createMany({
    data: added.map(({ id, version, content }) => ({
      shopId,
      id,
      version,
      partNumber: content.partNumber,
      locationId: content.locationId,
      family: familyOf(content),
      createdAt: at,
    })),
  })
  const edited = changed.filter(({ version, before }) => version !== before.version)
  const updates = edited.map(({ id, version, content }) => ({ id, version, family: familyOf(content) }))
  await tx.$executeRaw`
    update stock_items s set family = u.family, version = u.version
    from json_to_recordset(${JSON.stringify(updates)}::json) as u(id uuid, version int, family json)
    where s.shop_id = ${shopId}::uuid and s.id = u.id`
  const versionOf =
    (createdBy: object) =>
    ({ id, version, content }: Kept<StockContent>) => ({
      shopId,
      subject: 'stock-item',
      subjectId: id,
      version,
      body: content,
      createdBy,
      createdAt: at,
    })
  await tx.recordVersion.createMany({
    data: [
      ...edited.map(({ before }) => versionOf({ kind: 'as-found' })(before)),
      ...[...added, ...edited].map(versionOf(by)),
    ],
    skipDuplicates: true,
  })
  const counted = [...added, ...changed].filter((line) => line.counted !== 0)
  await tx.stockChange.createMany({
    data: counted.map((line) => ({
      shopId,
      id: newId(),
      stockItemId: line.id,
      kind: 'counted',
      quantity: line.counted,
      writtenBy: by,
      writtenAt: at,
    })),
  })
  const moved = counted.map(({ id, counted: quantity }) => ({ id, quantity }))
  await tx.$executeRaw`
    update stock_items s set on_hand = s.on_hand + m.quantity
    from json_to_recordset(${JSON.stringify(moved)}::json) as m(id uuid, quantity int)
    where s.shop_id = ${shopId}::uuid and s.id = m.id`
}
