import { boxedPicture, indexedDbPictures } from './indexed-db-pictures.ts'
import type { Kept } from './kept.ts'
import { indexedDbKeys } from './key-store.ts'
import { tabletDatabase } from './tablet-database.ts'
import { tabletVault } from './vault.ts'

const nameOf = (name: string) => `kept/${name}`

/** Keeps one thing that is needed to open without the server, sealed. */
export const keepOnce = async (name: string, value: unknown): Promise<void> =>
  indexedDbKeys.put(nameOf(name), await tabletVault.seal(value))

/** What was kept under this name; undefined: nothing. @throws VaultShut */
export const keptOnce = async (name: string): Promise<unknown> => {
  const kept = (await indexedDbKeys.get(nameOf(name))) as Kept | undefined
  return kept === undefined ? undefined : tabletVault.open(kept)
}

/**
 * Drops every key of this tablet and all that only those could open. What is sealed to the server stays until it was handed
 * in.
 */
export const forgetTablet = async (): Promise<void> => {
  await tabletVault.shut()
  for (const name of await indexedDbKeys.names()) await indexedDbKeys.drop(name)
  const database = await tabletDatabase()
  await Promise.all((['forms', 'reads'] as const).map((store) => database.clear(store)))
  for (const digest of await indexedDbPictures.digests())
    if ((await boxedPicture(digest)) === null) await indexedDbPictures.drop(digest)
}
