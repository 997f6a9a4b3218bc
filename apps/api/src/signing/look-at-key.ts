import { join } from 'node:path'
import { fingerprintOf, type SigningFault, signingFault } from '@bayledger/report/signing-fault'
import type { Config } from '../config.ts'
import type { SigningIdentity } from '../deps.ts'
import { type FoundFiles, readSigningFolder } from './signing-folder.ts'
import type { SigningNote } from './signing-notes.ts'

/** Why a shop's reports cannot be sealed here. */
export type SigningTrouble =
  | SigningFault
  | { readonly why: 'key-only' | 'certificate-only' | 'lost' }
  | { readonly why: 'another-key' | 'earlier-key'; readonly here: string; readonly shops: string }

export type KeySeen =
  | { readonly is: 'good'; readonly identity: SigningIdentity; readonly fingerprint: string }
  /** Nothing was ever sealed and there is no key: one may be made. */
  | { readonly is: 'none-yet' }
  | { readonly is: 'trouble'; readonly trouble: SigningTrouble }

export type KeyPlace = Pick<Config, 'signing' | 'dataFolder'>

/** Where the key of a shop is kept: that of the database's first shop without a folder of its own. */
export const signingFolderOf = ({ dataFolder }: KeyPlace, shopId: string, firstShopId: string): string =>
  shopId === firstShopId ? join(dataFolder, 'signing') : join(dataFolder, 'signing', shopId)

/** The key that the settings name, or what the folder holds. */
export const findKey = ({ signing }: KeyPlace, folder: string): FoundFiles =>
  signing ? { found: 'both', identity: signing } : readSigningFolder(folder)

/**
 * Judges a key that was found: it must seal, and be the one that the shop's reports are sealed with. `notes` are the keys that the
 * database knows, the newest last; `sealed`: there are reports.
 */
export const lookAtKey = (
  found: FoundFiles,
  {
    notes,
    sealed,
    now,
  }: { readonly notes: readonly SigningNote[]; readonly sealed: boolean; readonly now: Date },
): KeySeen => {
  if (found.found === 'nothing')
    return notes.length > 0 || sealed ? { is: 'trouble', trouble: { why: 'lost' } } : { is: 'none-yet' }
  if (found.found !== 'both') return { is: 'trouble', trouble: { why: found.found } }
  const fault = signingFault(found.identity, now)
  if (fault) return { is: 'trouble', trouble: fault }
  const here = fingerprintOf(found.identity.certificatePem)
  const newest = notes.at(-1)
  if (newest && newest.fingerprint !== here) {
    const why = notes.some(({ fingerprint }) => fingerprint === here) ? 'earlier-key' : 'another-key'
    return { is: 'trouble', trouble: { why, here, shops: newest.fingerprint } }
  }
  return { is: 'good', identity: found.identity, fingerprint: here }
}
