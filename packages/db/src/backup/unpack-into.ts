import { createWriteStream, mkdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import type { ArchiveEntry } from './read-tar.ts'

/** Puts an entry at its path below a folder, readable by its owner only. */
export async function unpackInto(folder: string, { path, kind, content }: ArchiveEntry): Promise<void> {
  const place = join(folder, path)
  mkdirSync(kind === 'folder' ? place : dirname(place), { recursive: true, mode: 0o700 })
  if (kind === 'file') await pipeline(content, createWriteStream(place, { mode: 0o600 }))
}
