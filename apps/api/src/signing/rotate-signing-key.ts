import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { fingerprintOf, signingFault } from '@bayledger/report/signing-fault'
import type { Pool } from 'pg'
import type { Clock } from '../deps.ts'
import { newSigningIdentity } from './kept-signing.ts'
import { type KeyPlace, signingFolderOf } from './look-at-key.ts'
import { writeSigningFolder } from './signing-folder.ts'
import { listShopNames, listSigningNotes, noteSigningKey, whileKeysRest } from './signing-notes.ts'

export class RotationProblem extends Error {
  override readonly name = 'RotationProblem'
}

export type Rotated = {
  readonly shopName: string
  readonly fingerprint: string
  readonly folder: string
  /** Where the files of before are; `null` where there were none. */
  readonly keptIn: string | null
}

/**
 * Makes a new key for a shop, or takes the one that the settings name, and notes it: servers seal with it from their next report
 * on. The files of before are kept. Broken off in between, it is run again. Throws a RotationProblem that says what to do.
 */
export const rotateSigningKey = (
  place: KeyPlace & { readonly pool: Pool; readonly clock: Clock },
  shopName: string | undefined,
): Promise<Rotated> =>
  whileKeysRest(place.pool, async (client) => {
    const shops = await listShopNames(client)
    const shop =
      shopName === undefined && shops.length === 1 ? shops[0] : shops.find(({ name }) => name === shopName)
    if (!shop)
      throw new RotationProblem(
        shops.length === 0
          ? 'There is no shop in this database yet. Its key is made with its first report.'
          : `Name the shop: ${shops.map(({ name }) => `npm run certificate -- rotate "${name}"`).join(', or ')}`,
      )
    const now = place.clock.now()
    const notes = await listSigningNotes(client, shop.id)
    const folder = signingFolderOf(place, shop.id, shops[0]?.id ?? shop.id)
    const identity =
      place.signing ?? (await newSigningIdentity(shop.name, new Date(now.getTime() - 86_400_000)))
    const fault = signingFault(identity, now)
    if (fault)
      throw new RotationProblem(
        `SIGNING_CERT and SIGNING_KEY cannot seal (${fault.why}). Correct them first; nothing was changed.`,
      )
    const fingerprint = fingerprintOf(identity.certificatePem)
    if (notes.some((note) => note.fingerprint === fingerprint))
      throw new RotationProblem(
        'The shop has sealed with this key before. A renewed certificate of the same key needs no rotation; a new key does. Nothing was changed.',
      )
    const kept = join(folder, 'earlier', now.toISOString().replaceAll(':', '-'))
    if (!place.signing) writeSigningFolder(folder, identity, now.toISOString().replaceAll(':', '-'))
    await noteSigningKey(client, shop.id, {
      number: (notes.at(-1)?.number ?? 0) + 1,
      fingerprint,
      certificate: identity.certificatePem,
      since: now,
    })
    return { shopName: shop.name, fingerprint, folder, keptIn: existsSync(kept) ? kept : null }
  })
