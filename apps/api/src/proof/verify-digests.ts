import { type DigestKey, judgeDigest } from './digest.ts'
import type { FoundDigest } from './digest-folder.ts'
import type { DigestNote } from './digest-notes.ts'
import type { Fault } from './finding.ts'

/** The hash of an order's entry by its number, as the database has it now; undefined: there is none. */
export type HashOf = (orderId: string, seq: number) => string | undefined

/**
 * Holds a shop's digests against each other, against the database's notes of them, against the key, and the entries
 * against what the digests say of them. At most one fault a digest.
 */
export const verifyDigests = (
  shopName: string,
  files: readonly FoundDigest[],
  notes: readonly DigestNote[],
  key: DigestKey | null,
  entries: { readonly hashOf: HashOf; readonly numberOf: (orderId: string) => string },
): Fault[] => {
  const most = Math.max(0, ...files.map(({ number }) => number), ...notes.map(({ number }) => number))
  const faults: Fault[] = []
  let previous: string | null = '0'.repeat(64)
  for (let number = 1; number <= most; number += 1) {
    const found = files.find((file) => file.number === number)
    const note = notes.find((candidate) => candidate.number === number)
    const fault = faultOf(found, note, key, previous, entries)
    if (fault !== null) faults.push(nameIt(shopName, number, found, fault))
    // After a missing file the database's note goes on, so that one gap is one fault.
    previous = found?.digest?.hash ?? note?.hash ?? null
  }
  return faults
}

type Broken = { readonly what: string; readonly orderNumber?: string; readonly seq?: number }

const nameIt = (shopName: string, number: number, found: FoundDigest | undefined, broken: Broken): Fault => {
  const digest = `Digest ${number} of ${shopName}${found?.digest ? ` (${found.digest.day})` : ''}`
  return broken.orderNumber === undefined
    ? { where: digest, what: broken.what }
    : { where: `Order ${broken.orderNumber}, entry ${broken.seq}`, what: `${broken.what} (${digest})` }
}

const faultOf = (
  found: FoundDigest | undefined,
  note: DigestNote | undefined,
  key: DigestKey | null,
  previous: string | null,
  { hashOf, numberOf }: { readonly hashOf: HashOf; readonly numberOf: (orderId: string) => string },
): Broken | null => {
  if (!found) return { what: 'its file is missing from the digest folder' }
  const { digest, number, file } = found
  if (digest === null || digest.number !== number) return { what: `${file} is not a digest of this shop` }
  if (key === null)
    return { what: 'the key that signed it is missing (digest-key.pem in the folder signing)' }
  const verdict = judgeDigest(digest, key)
  if (verdict === 'other-key') return { what: 'it is signed by another key than this shop’s' }
  if (verdict === 'changed') return { what: 'it was changed after it was signed' }
  if (previous !== null && digest.previous !== previous)
    return { what: 'it does not follow the digest before it' }
  if (!note) return { what: 'the database has no note of it: rows of digests were removed' }
  if (note.hash !== digest.hash) return { what: 'the database remembers another digest under this number' }
  for (const { orderId, seq, hash } of digest.orders) {
    const now = hashOf(orderId, seq)
    if (now === hash) continue
    return {
      what:
        now === undefined
          ? 'the digest covers it, and it is not in the database any more'
          : 'the chain was written again after the digest covered it: the hash is another one',
      orderNumber: numberOf(orderId),
      seq,
    }
  }
  return null
}
