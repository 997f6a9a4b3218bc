import type { Deps } from '../../deps.ts'
import { presentInstrument, presentShopHead, presentStockPart } from './present.ts'
import * as store from './store.ts'

/** The shop's gauges and wrenches. */
export const listInstruments = async (deps: Deps) =>
  (await store.listInstruments(deps.prisma, deps.shopId)).map(presentInstrument)

/** The stock lists of all places. */
export const listStock = async (deps: Deps) =>
  (await store.listStock(deps.prisma, deps.shopId)).flatMap(presentStockPart)

/** The shop with its places, and the newest version of each of its settings. */
export const getSettings = async (deps: Deps) => {
  const [shop, settings] = await Promise.all([
    store.findShop(deps.prisma, deps.shopId),
    store.listNewestSettings(deps.prisma, deps.shopId),
  ])
  return { shop, settings, head: presentShopHead(settings) }
}
