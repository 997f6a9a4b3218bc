import { createHash } from 'node:crypto'
import { text } from 'node:stream/consumers'
import { BackupProblem } from './backup-problem.ts'
import { AboutBackup, aboutPath, Manifest, manifestPath, parseEntry } from './manifest.ts'
import { type ArchiveEntry, readTar } from './read-tar.ts'
import { refuseOutside } from './refuse-outside.ts'
import { readSealed } from './sealed-file.ts'

/** What is done with each entry between the first and the last; what it leaves of the content is passed over. */
export type Take = (entry: ArchiveEntry, about: AboutBackup) => Promise<void>

/** What a backup says of itself, from its beginning: the rest is not read. */
export async function readAbout(file: string, identities: readonly string[]): Promise<AboutBackup> {
  for await (const entry of readTar(readSealed(file, identities))) return aboutIn(entry)
  throw noBackup(file)
}

/**
 * Reads a backup from its first byte to its last and hands over what is in it. Throws a BackupProblem where anything was
 * changed, cut off or left out, which may show only at the end: until then nothing that was handed over can be relied on.
 */
export async function readBackup(
  file: string,
  identities: readonly string[],
  take: Take,
): Promise<{ readonly about: AboutBackup; readonly manifest: Manifest }> {
  const found: Record<string, Manifest['files'][string]> = {}
  let about: AboutBackup | undefined
  let manifest: Manifest | undefined
  for await (const entry of readTar(readSealed(file, identities))) {
    if (about === undefined) about = await aboutIn(entry)
    else if (entry.path === manifestPath)
      manifest = parseEntry(Manifest, manifestPath, await text(entry.content))
    else {
      refuseOutside(entry.path)
      const hash = createHash('sha256')
      const content = hashed(entry.content, hash)
      await take({ ...entry, content }, about)
      for await (const _ of content);
      if (entry.kind === 'file') found[entry.path] = { bytes: entry.size, sha256: hash.digest('hex') }
    }
  }
  if (about === undefined || manifest === undefined) throw noBackup(file)
  refuseOtherFiles(file, manifest.files, found)
  return { about, manifest }
}

async function aboutIn(entry: ArchiveEntry): Promise<AboutBackup> {
  if (entry.path !== aboutPath)
    throw new BackupProblem('The file was encrypted for this key, and it is no backup of Bayledger.')
  return parseEntry(AboutBackup, aboutPath, await text(entry.content))
}

async function* hashed(content: AsyncIterable<Uint8Array>, hash: ReturnType<typeof createHash>) {
  for await (const piece of content) {
    hash.update(piece)
    yield piece
  }
}

function refuseOtherFiles(
  file: string,
  listed: Manifest['files'],
  found: Readonly<Record<string, Manifest['files'][string]>>,
): void {
  const names = new Set([...Object.keys(listed), ...Object.keys(found)])
  const wrong = [...names].filter((name) => listed[name]?.sha256 !== found[name]?.sha256)
  if (wrong.length > 0)
    throw new BackupProblem(
      `${file} does not hold what its list says: ${wrong.slice(0, 3).join(', ')}${wrong.length > 3 ? ' …' : ''}. Use another copy of it, or an older backup.`,
    )
}

function noBackup(file: string): BackupProblem {
  return new BackupProblem(
    `${file} is no whole backup of Bayledger. Use another copy of it, or an older backup.`,
  )
}
