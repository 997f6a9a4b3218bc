import { createPrivateKey, createPublicKey, type KeyObject, sign, verify } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { canonicalText } from '@bayledger/ledger/digests'
import { Digest, Id, Instant } from '@bayledger/ledger/text'
import * as z from 'zod/mini'
import { writeDurably } from '../core/durable-file.ts'
import { listDigestFiles } from './digest-folder.ts'
import { keptDigestKey, readDigestKey } from './digest-key.ts'
import type { DigestPlaces } from './write-digest.ts'

/** That a person was erased, outside the database: a backup from before is restored with them, and they are erased again. */
const content = {
  format: z.literal(1),
  shopId: Id,
  erasureId: Id,
  customerId: Id,
  at: Instant,
  reason: z.string(),
  identity: z.nullable(z.string()),
  /** The id of whoever erased; `null`: the program by itself. */
  by: z.nullable(Id),
}
const NoteContent = z.strictObject(content)
export type ErasureNote = z.infer<typeof NoteContent>

/** `signature` is ECDSA over P-256 of the content's canonical text, with the key of the daily digests. */
const NoteFile = z.strictObject({
  ...content,
  signedBy: Digest,
  signature: z.string().check(z.regex(/^[A-Za-z0-9+/]{86}==$/)),
})

const pattern = /^erased-[0-9a-f-]{36}\.json$/

/** Whether a file of a shop's digest folder is such a note. */
export const isErasureNote = (name: string): boolean => pattern.test(name)

/** Writes a note whole and on disk, or not at all. */
export const writeErasureNote = (places: DigestPlaces, note: ErasureNote): void => {
  const hasDigests = listDigestFiles(places.digestFolder, note.shopId).length > 0
  const { privateKeyPem, fingerprint } = keptDigestKey(places.dataFolder, hasDigests)
  const signature = sign('sha256', Buffer.from(canonicalText(note)), {
    key: privateKeyPem,
    dsaEncoding: 'ieee-p1363',
  }).toString('base64')
  const file = join(places.digestFolder, note.shopId, `erased-${note.erasureId}.json`)
  writeDurably(file, `${JSON.stringify({ ...note, signedBy: fingerprint, signature }, null, 1)}\n`)
}

/** The notes of a shop that its own key signed, oldest first. Whoever can write into the folder cannot have anybody erased. */
export const listErasureNotes = (places: DigestPlaces, shopId: string): readonly ErasureNote[] =>
  readErasureNotes(places, shopId).notes

/** The same, and the files that are named like notes and are none of this shop. */
export const readErasureNotes = (
  places: DigestPlaces,
  shopId: string,
): { readonly notes: readonly ErasureNote[]; readonly strangers: readonly string[] } => {
  const folder = join(places.digestFolder, shopId)
  if (!existsSync(folder)) return { notes: [], strangers: [] }
  const key = readDigestKey(places.dataFolder)
  const publicKey = key === null ? null : createPublicKey(createPrivateKey(key.privateKeyPem))
  const files = readdirSync(folder)
    .filter(isErasureNote)
    .map((name) => ({ file: join(folder, name), note: signedNote(join(folder, name), publicKey) }))
  return {
    notes: files.flatMap(({ note }) => note ?? []).toSorted((one, other) => one.at.localeCompare(other.at)),
    strangers: files.filter(({ note }) => note === null).map(({ file }) => file),
  }
}

const signedNote = (path: string, publicKey: KeyObject | null): ErasureNote | null => {
  const file = readNote(path)
  if (file === null || publicKey === null) return null
  const { signedBy: _signedBy, signature, ...note } = file
  const isOurs = verify(
    'sha256',
    Buffer.from(canonicalText(note)),
    { key: publicKey, dsaEncoding: 'ieee-p1363' },
    Buffer.from(signature, 'base64'),
  )
  return isOurs ? note : null
}

const readNote = (file: string): z.infer<typeof NoteFile> | null => {
  try {
    const parsed = z.safeParse(NoteFile, JSON.parse(readFileSync(file, 'utf8')))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}
