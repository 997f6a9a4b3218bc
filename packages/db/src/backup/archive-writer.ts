import { createHash } from 'node:crypto'
import { createReadStream, statSync } from 'node:fs'
import { join } from 'node:path'
import { filesBelow } from './files-below.ts'
import type { Manifest } from './manifest.ts'
import { type NamedAtEnd, type Put, writeSealed } from './sealed-file.ts'
import { BLOCK_BYTES, paddingAfter, tarHeader } from './tar-header.ts'

/** Takes the entries of a backup one after the other. */
export type ArchiveWriter = {
  readonly addFolder: (path: string) => Promise<void>
  /** A content that is shorter than `size` is filled up with zeros, one that is longer is cut. */
  readonly addFile: (path: string, size: number, content: AsyncIterable<Uint8Array>) => Promise<void>
  readonly addBytes: (path: string, bytes: Uint8Array) => Promise<void>
  /** What was added up to now. */
  readonly files: () => Manifest['files']
}

/** Writes a backup whole and on disk, or not at all. */
export function writeArchive<T>(
  file: NamedAtEnd<T>,
  recipients: readonly string[],
  fill: (archive: ArchiveWriter) => Promise<T>,
): Promise<T> {
  return writeSealed(file, recipients, async (put) => {
    const result = await fill(archiveOn(put))
    await put(new Uint8Array(2 * BLOCK_BYTES))
    return result
  })
}

function archiveOn(put: Put): ArchiveWriter {
  const files: Record<string, Manifest['files'][string]> = {}
  const addFile: ArchiveWriter['addFile'] = async (path, size, content) => {
    const hash = createHash('sha256')
    const take = (bytes: Uint8Array) => {
      hash.update(bytes)
      return put(bytes)
    }
    await put(tarHeader({ path, kind: 'file', size }))
    let left = size
    for await (const piece of content) {
      const fitting = piece.subarray(0, left)
      left -= fitting.length
      await take(fitting)
      if (left === 0) break
    }
    for (; left > 0; left -= Math.min(left, ZEROS.length)) await take(ZEROS.subarray(0, left))
    await put(ZEROS.subarray(0, paddingAfter(size)))
    files[path] = { bytes: size, sha256: hash.digest('hex') }
  }
  return {
    addFolder: (path) => put(tarHeader({ path, kind: 'folder', size: 0 })),
    addFile,
    addBytes: (path, bytes) => addFile(path, bytes.length, one(bytes)),
    files: () => files,
  }
}

const ZEROS = new Uint8Array(64 * 1024)

async function* one(bytes: Uint8Array) {
  yield bytes
}

/** Adds the files of a folder, and those below it, as they are now; a folder that is not there has none. */
export async function addFilesBelow(archive: ArchiveWriter, folder: string, path: string): Promise<void> {
  for (const name of filesBelow(folder)) {
    const file = join(folder, name)
    await archive.addFile(`${path}/${name}`, statSync(file).size, createReadStream(file))
  }
}
