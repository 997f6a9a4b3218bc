import { isDeepStrictEqual } from 'node:util'
import type { PriceBookFacts } from '@bayledger/contract/prices'
import {
  type PriceBook,
  type PriceBookContent,
  readPriceBook,
  seasonsOn,
} from '@bayledger/reckoning/money/price-book'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { type Kept, presentVersion } from '../../core/record-versions.ts'
import { askAbout } from '../../core/refused-fields.ts'
import { staleVersion } from '../../core/stale-version.ts'
import type { Deps } from '../../deps.ts'
import { doubtsOf } from './policy.ts'
import * as store from './store.ts'

type KeptPrices = Kept<PriceBookContent>

/** @throws an error where what is stored cannot be read: no version that this program wrote is so. */
const bookOf = (body: unknown): PriceBook => {
  const book = readPriceBook(body)
  if (book === null) throw new Error('a stored version of the prices cannot be read')
  return book
}

const contentOf = (body: unknown): PriceBookContent => {
  const { form: _form, version: _version, ...content } = bookOf(body)
  return content
}

/** The newest version of the prices; `null` where the shop has set none. */
export const newest = async (
  tx: Parameters<typeof store.findNewest>[0],
  shopId: string,
): Promise<KeptPrices | null> => {
  const row = await store.findNewest(tx, shopId)
  return row && { id: shopId, version: row.version, content: contentOf(row.body) }
}

/** What the page says beside the prices: whose estimates keep theirs, and the seasons of today. */
export const factsOf = async (
  { prisma, shopId, clock }: Deps,
  { content }: KeptPrices,
): Promise<PriceBookFacts> => ({
  openEstimates: await store.countOpenEstimates(prisma, shopId),
  inSeason: seasonsOn(content, await store.findToday(prisma, shopId, clock.now())).map(({ words }) => words),
})

/** The shop's price book; `null` where it has set no prices. */
export const findPrices = ({ prisma, shopId }: Deps) => newest(prisma, shopId)

/** The price book with who changed what, newest first. @throws RECORD_NOT_FOUND for another id than the shop's */
export const getPrices = async (deps: Deps, id: string) => {
  const { prisma, shopId } = deps
  const record = id === shopId ? await newest(prisma, shopId) : null
  if (record === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'price-book' })
  const [rows, names] = await Promise.all([
    store.listVersions(prisma, shopId),
    store.listNames(prisma, shopId),
  ])
  return { record, history: rows.map((row) => presentVersion({ ...row, body: contentOf(row.body) }, names)) }
}

/**
 * Saves a version of the prices over the one that was read. What is as it was stays the version that it is, unless
 * nobody has saved it yet: whoever saves the prices that came with the program takes them as the shop's own. @throws
 * VERSION_STALE with both, VALUE_DOUBTFUL for what is likely a slip
 */
export const putPrices = (
  deps: Deps,
  actor: StaffActor,
  sent: KeptPrices,
  sure: readonly string[] | undefined,
): Promise<KeptPrices> => {
  const { prisma, shopId, clock } = deps
  askAbout(doubtsOf(sent.content), sure)
  return prisma.$transaction(async (tx) => {
    await store.lockPrices(tx, shopId)
    const found = sent.id === shopId ? await newest(tx, shopId) : null
    if (found === null) throw new AppError({ code: 'RECORD_NOT_FOUND', what: 'price-book' })
    if (found.version !== sent.version) throw staleVersion('price-book', found, sent.content)
    const isSame = isDeepStrictEqual(found.content, sent.content)
    if (isSame && (await store.isSavedBySomebody(tx, shopId))) return found
    return writeVersion(tx, { ...found, content: sent.content }, { staffId: actor.staffId, at: clock.now() })
  })
}

/** Writes the next version of the prices; they are locked. */
export const writeVersion = async (
  tx: Parameters<typeof store.insertVersion>[0],
  { id, version, content }: KeptPrices,
  by: { readonly staffId: string; readonly at: Date },
): Promise<KeptPrices> => {
  const kept = { id, version: version + 1, content }
  await store.insertVersion(tx, id, newId(), { form: 3, version: kept.version, ...content }, by)
  return kept
}
