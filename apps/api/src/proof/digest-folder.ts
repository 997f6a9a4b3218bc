import { existsSync, linkSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { syncFolder } from '@bayledger/db/embedded/sync-folder'
import { Id } from '@bayledger/ledger/text'
import * as z from 'zod/mini'
import { makeDurableFolder } from '../core/durable-file.ts'
import { DigestFile } from './digest.ts'

/** A file of a shop's folder, by its number; `digest` is `null` where it cannot be read as one. */
export type FoundDigest = {
  readonly number: number
  readonly file: string
  readonly digest: DigestFile | null
}

const nameOf = (number: number): string => `${String(number).padStart(6, '0')}.json`

/** The digests of a shop as they lie in the folder, by number. Other files are passed over. */
export const listDigestFiles = (folder: string, shopId: string): FoundDigest[] => {
  const own = join(folder, shopId)
  if (!existsSync(own)) return []
  return readdirSync(own)
    .flatMap((name) => (/^\d{6,}\.json$/.test(name) ? [{ name, number: Number.parseInt(name, 10) }] : []))
    .toSorted((one, other) => one.number - other.number)
    .map(({ name, number }) => ({ number, file: join(own, name), digest: readDigest(join(own, name)) }))
}

/** The shops of which the folder holds digests, as their subfolders are named. */
export const listDigestShops = (folder: string): string[] =>
  existsSync(folder)
    ? readdirSync(folder).filter(
        (name) => z.safeParse(Id, name).success && listDigestFiles(folder, name).length > 0,
      )
    : []

const readDigest = (file: string): DigestFile | null => {
  try {
    const parsed = z.safeParse(DigestFile, JSON.parse(readFileSync(file, 'utf8')))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}

/** Writes a digest whole and on disk, or not at all; one that is there is never written over. */
export const writeDigestFile = (folder: string, digest: DigestFile): string => {
  const own = join(folder, digest.shopId)
  makeDurableFolder(own)
  const file = join(own, nameOf(digest.number))
  const unfinished = `${file}.${process.pid}.part`
  writeFileSync(unfinished, `${JSON.stringify(digest, null, 1)}\n`, { mode: 0o400, flush: true })
  try {
    linkSync(unfinished, file)
  } finally {
    rmSync(unfinished, { force: true })
  }
  syncFolder(own)
  return file
}
