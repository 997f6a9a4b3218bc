import { fingerprintOf } from '@bayledger/report/signing-fault'
import { createSigningIdentity } from '@bayledger/report/signing-key'
import type { Pool } from 'pg'
import { AppError } from '../core/app-error.ts'
import type { Clock, Signing, SigningIdentity } from '../deps.ts'
import { troubleWords } from '../words/signing-words.ts'
import { findKey, type KeyPlace, type KeySeen, lookAtKey, signingFolderOf } from './look-at-key.ts'
import { writeSigningFolder } from './signing-folder.ts'
import { hasSealed, listShopNames, listSigningNotes, noteSigningKey, whileKeysRest } from './signing-notes.ts'

const day = 86_400_000
/** A made certificate is good for 20 years. */
const daysGood = 20 * 365

type Place = KeyPlace & {
  readonly pool: Pool
  readonly clock: Clock
  /** How long before it is made a certificate is good: a demo has reports of the year before. */
  readonly daysBefore: number
}

/**
 * The keys that seal reports: the one that the settings name, for every shop, or one that was made for a shop and is kept in
 * the data folder. A key is made only for a shop that never had one; whatever is missing, foreign or past its days is told in words,
 * and never replaced but by `npm run certificate -- rotate`.
 */
export const keptSigning = (place: Place): Signing => ({
  signingOf: async (shopId) => {
    const seen = await look(place, shopId)
    if (seen.is === 'good') return seen.identity
    if (seen.is === 'none-yet') return makeKey(place, shopId)
    throw new AppError({ code: 'SERVICE_UNAVAILABLE', why: 'signing-key' })
  },
  signingTroubles: async () => {
    const shops = await listShopNames(place.pool)
    const words: string[] = []
    for (const { id, name } of shops) {
      const seen = await look(place, id)
      if (seen.is === 'trouble') words.push(troubleWords(name, folderOf(place, id, shops), seen.trouble))
    }
    return words
  },
})

const folderOf = (place: Place, shopId: string, shops: readonly { readonly id: string }[]): string =>
  signingFolderOf(place, shopId, shops[0]?.id ?? shopId)

const look = async (place: Place, shopId: string): Promise<KeySeen> => {
  const { pool, clock } = place
  const folder = folderOf(place, shopId, await listShopNames(pool))
  const notes = await listSigningNotes(pool, shopId)
  const found = findKey(place, folder)
  const seen = lookAtKey(found, { notes, sealed: await hasSealed(pool, shopId), now: clock.now() })
  if (seen.is === 'good' && notes.length === 0) await noteFirst(place, shopId, seen.identity)
  return seen
}

/** What sealed before the database noted keys, or a certificate that was bought before the first report. */
const noteFirst = (place: Place, shopId: string, { certificatePem }: SigningIdentity): Promise<void> =>
  whileKeysRest(place.pool, async (client) => {
    if ((await listSigningNotes(client, shopId)).length > 0) return
    await noteSigningKey(client, shopId, {
      number: 1,
      fingerprint: fingerprintOf(certificatePem),
      certificate: certificatePem,
      since: place.clock.now(),
    })
  })

/** Of two processes that come at once, the second finds what the first has made. */
const makeKey = (place: Place, shopId: string): Promise<SigningIdentity> =>
  whileKeysRest(place.pool, async (client) => {
    const shops = await listShopNames(client)
    const shop = shops.find(({ id }) => id === shopId)
    if (!shop) throw new Error(`there is no shop ${shopId} to make a signing key for`)
    const folder = folderOf(place, shopId, shops)
    const now = place.clock.now()
    const notes = await listSigningNotes(client, shopId)
    const seen = lookAtKey(findKey(place, folder), { notes, sealed: await hasSealed(client, shopId), now })
    if (seen.is === 'good') return seen.identity
    if (seen.is === 'trouble') throw new AppError({ code: 'SERVICE_UNAVAILABLE', why: 'signing-key' })
    const identity = await newSigningIdentity(shop.name, new Date(now.getTime() - place.daysBefore * day))
    writeSigningFolder(folder, identity, 'none')
    await noteSigningKey(client, shopId, {
      number: 1,
      fingerprint: fingerprintOf(identity.certificatePem),
      certificate: identity.certificatePem,
      since: now,
    })
    return identity
  })

/** A key of the shop's own, with a certificate that it has signed itself. */
export const newSigningIdentity = (shopName: string, goodFrom: Date): Promise<SigningIdentity> =>
  createSigningIdentity({
    commonName: shopName.slice(0, 64),
    notBefore: goodFrom.toISOString(),
    days: daysGood,
  })
