import type { BodyOf } from '@bayledger/contract/endpoint'
import type {
  receiveTransfer as receiveTransferRoute,
  StockChangeRequest,
  StockContent,
  StockItem,
} from '@bayledger/contract/stock'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { once } from '../../core/once.ts'
import {
  createRecord,
  type Kept,
  keepVersion,
  listRecordVersions,
  putRecord,
} from '../../core/record-versions.ts'
import { refuseFields } from '../../core/refused-fields.ts'
import type { Deps } from '../../deps.ts'
import { allowedWords } from '../../words/field-words.ts'
import { presentChange, presentItem, presentRecalled, presentTransfer, usedDays } from './present.ts'
import * as recall from './store/read-recall.ts'
import * as store from './store.ts'

type Key = { readonly key: string; readonly requestHash: string }

const since = ({ clock }: Pick<Deps, 'clock'>): Date =>
  new Date(clock.now().getTime() - usedDays * 86_400_000)

/** The lines of the stock lists of all places. */
export const listItems = async (deps: Deps): Promise<StockItem[]> =>
  (await store.listItems(deps.prisma, deps.shopId, since(deps))).flatMap(presentItem)

/** What is on its way from one place to another. */
export const listTransfers = async ({ prisma, shopId }: Deps) =>
  (await store.listTransfers(prisma, shopId)).map(presentTransfer)

const itemIn = async (deps: Deps, tx: Pick<store.Tx, '$queryRaw'>, id: string): Promise<StockItem> => {
  const [item] = (await store.listItems(tx, deps.shopId, since(deps), id)).flatMap(presentItem)
  if (!item) throw notListed()
  return item
}

const notListed = () => new AppError({ code: 'RECORD_NOT_FOUND', what: 'stock-item' })

/** A line with who changed what of it, newest first. @throws RECORD_NOT_FOUND */
export const getItem = async (deps: Deps, id: string) => ({
  record: await itemIn(deps, deps.prisma, id),
  history: await listRecordVersions(deps.prisma, deps.shopId, 'stock-item', id),
})

/** Puts a part on a place's list. @throws AppError where the place is unknown or has the part on its list. */
export const createItem = async (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  content: StockContent,
): Promise<StockItem> => {
  const { prisma, shopId } = deps
  await checkPlace(prisma, shopId, content.locationId, 'content.locationId')
  const kept = await createRecord(deps, actor, key, listedOnce, content)
  return itemIn(deps, prisma, kept.id)
}

/** Asked within the transaction, after whatever the same request wrote before. */
const listedOnce: typeof store.stockRecords = {
  ...store.stockRecords,
  insert: async (tx, shopId, kept, at) => {
    const { locationId, partNumber } = kept.content
    if (await store.findListed(tx, shopId, locationId, partNumber))
      refuseFields([{ field: 'content.partNumber', found: partNumber, allowed: allowedWords.unlistedPart }])
    await store.stockRecords.insert(tx, shopId, kept, at)
  },
}

/** Saves what the list says of a part. @throws AppError with both versions where someone was first. */
export const putItem = async (
  deps: Deps,
  actor: StaffActor,
  sent: Kept<StockContent>,
): Promise<StockItem> => {
  const { content: before } = await itemIn(deps, deps.prisma, sent.id)
  refuseFields(
    (['partNumber', 'locationId'] as const)
      .filter((field) => before[field] !== sent.content[field])
      .map((field) => ({
        field: `content.${field}`,
        found: sent.content[field],
        allowed: allowedWords.stays(before[field]),
      })),
  )
  const kept = await putRecord(deps, actor, store.stockRecords, sent)
  return itemIn(deps, deps.prisma, kept.id)
}

/** The newest movements of a line. @throws RECORD_NOT_FOUND */
export const listChanges = async (deps: Deps, id: string) => {
  await itemIn(deps, deps.prisma, id)
  return (await store.listChanges(deps.prisma, deps.shopId, id)).map(presentChange)
}

/**
 * Writes what somebody did with a part, and moves what is on hand by it. @throws AppError where the list moved since a
 * count, where more is taken than there is, and where more cores go back than are owed.
 */
export const changeStock = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  itemId: string,
  request: StockChangeRequest,
): Promise<StockItem> => {
  const { shopId } = deps
  const at = deps.clock.now()
  return once(deps.prisma, { shopId, actor: actor.staffId, ...key, at }, async (tx) => {
    const item = await store.lockItem(tx, shopId, itemId)
    if (!item) throw notListed()
    const by = { kind: 'staff', staffId: actor.staffId } as const
    const change = { id: newId(), stockItemId: itemId, kind: request.kind, writtenBy: by, writtenAt: at }
    switch (request.kind) {
      case 'received': {
        const { quantity, cores, lot, words } = request
        await store.insertChange(tx, shopId, { ...change, quantity, cores, lot, words })
        break
      }
      case 'counted': {
        const { found, listed, words } = request
        if (item.onHand !== listed)
          throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'moved-since', listed, now: item.onHand })
        await store.insertChange(tx, shopId, { ...change, quantity: found - listed, words })
        break
      }
      case 'scrapped': {
        checkEnough(item, request.quantity)
        const { lot, words } = request
        await store.insertChange(tx, shopId, { ...change, quantity: -request.quantity, lot, words })
        break
      }
      case 'sent': {
        checkEnough(item, request.quantity)
        const toItemId = await lineAt(tx, shopId, item, request.toLocationId, { by, at })
        const { lot } = request
        const transfer = { transferId: newId(), toItemId }
        await store.insertChange(tx, shopId, { ...change, quantity: -request.quantity, lot, ...transfer })
        break
      }
      case 'core-returned': {
        const { cores: asked, words } = request
        const { coresOwed: owed } = (await itemIn(deps, tx, itemId)).facts
        if (asked > owed)
          throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'more-cores-than-owed', owed, asked })
        await store.insertChange(tx, shopId, { ...change, quantity: 0, cores: -asked, words })
        break
      }
    }
    return itemIn(deps, tx, itemId)
  })
}

const checkEnough = ({ onHand }: { readonly onHand: number }, asked: number): void => {
  if (asked > onHand) throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'not-enough', onHand, asked })
}

const checkPlace = async (
  tx: Pick<store.Tx, 'location'>,
  shopId: string,
  locationId: string,
  field: string,
): Promise<void> => {
  if (await store.isPlace(tx, shopId, locationId)) return
  throw new AppError(
    { code: 'FIELDS_INVALID', what: 'location' },
    { fields: [{ field, found: locationId, allowed: allowedWords.location }] },
  )
}

/** The line of a part at another place, which is put on that place's list if it is not there. */
const lineAt = async (
  tx: store.Tx,
  shopId: string,
  { content }: Kept<StockContent>,
  locationId: string,
  { by, at }: { readonly by: { readonly staffId: string }; readonly at: Date },
): Promise<string> => {
  if (locationId === content.locationId) throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'same-place' })
  await checkPlace(tx, shopId, locationId, 'toLocationId')
  const listed = await store.findListed(tx, shopId, locationId, content.partNumber)
  if (listed) return listed.id
  const kept = { id: newId(), version: 1, content: { ...content, locationId, minimum: null } }
  await store.stockRecords.insert(tx, shopId, kept, at)
  await keepVersion(tx, shopId, 'stock-item', kept, { by, at })
  return kept.id
}

/** Records what arrived of a transfer. @throws AppError where it arrived before, or fewer came and nobody says why. */
export const receiveTransfer = (
  deps: Deps,
  actor: StaffActor,
  key: Key,
  transferId: string,
  { quantity, words }: BodyOf<typeof receiveTransferRoute>,
): Promise<StockItem> => {
  const { shopId } = deps
  const at = deps.clock.now()
  return once(deps.prisma, { shopId, actor: actor.staffId, ...key, at }, async (tx) => {
    const [transfer] = await store.listTransfers(tx, shopId, transferId)
    if (!transfer) throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'no-such-transfer' })
    if (transfer.isOver) throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'arrived-before' })
    const { quantity: sent, toItemId, lot } = transfer
    if (quantity > sent)
      throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'more-than-sent', sent, asked: quantity })
    if (quantity < sent && words === null)
      throw new AppError({ code: 'STOCK_NOT_MOVED', why: 'missing-not-explained' })
    await store.insertChange(tx, shopId, {
      id: newId(),
      stockItemId: toItemId,
      kind: 'arrived',
      quantity,
      lot,
      words,
      transferId,
      writtenBy: { kind: 'staff', staffId: actor.staffId },
      writtenAt: at,
    })
    return itemIn(deps, tx, toItemId)
  })
}

/** Where the parts of a lot are: at vehicles, with whom to call, and on shelves. */
export const recallLot = async ({ pool, shopId }: Deps, lot: string, withContact: boolean) => {
  const [drawn, shelves] = await Promise.all([
    recall.findDrawn(pool, shopId, lot),
    recall.findOnShelves(pool, shopId, lot),
  ])
  return { vehicles: presentRecalled(drawn, withContact), shelves }
}
