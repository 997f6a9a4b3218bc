import { randomBytes } from 'node:crypto'
import { once } from 'node:events'
import { createReadStream, createWriteStream, existsSync, renameSync, rmSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { constants, createZstdCompress, createZstdDecompress } from 'node:zlib'
import { syncFolder } from '../embedded/sync-folder.ts'
import { BackupProblem } from './backup-problem.ts'
import { unfinishedName } from './clear-unfinished.ts'

/** Takes the next bytes and comes back when there is room for more. */
export type Put = (bytes: Uint8Array) => Promise<void>

/** A file whose name is known only when it is written. */
export type NamedAtEnd<T> = { readonly folder: string; readonly nameOf: (written: T) => string }

const placeOf = (file: string) => ({ folder: dirname(file), nameOf: () => basename(file) })

/**
 * Writes a file that only the holder of the identity can read: what `write` puts, compressed, then encrypted to the
 * recipients. It is written beside its place and takes its name when it is whole and on disk; a failure leaves nothing.
 *
 * @source The encryption is age v1, the format of age-encryption.org; the compression Zstandard, RFC 8878.
 */
export async function writeSealed<T>(
  file: string | NamedAtEnd<T>,
  recipients: readonly string[],
  write: (put: Put) => Promise<T>,
): Promise<T> {
  const compress = createZstdCompress({ params: { [constants.ZSTD_c_checksumFlag]: 1 } })
  const { Encrypter } = await import('age-encryption')
  const encrypter = new Encrypter()
  for (const recipient of recipients) encrypter.addRecipient(recipient)
  const encrypted = await encrypter.encrypt(webStreamOf(compress))
  const { folder, nameOf } = typeof file === 'string' ? placeOf(file) : file
  const unfinished = join(folder, unfinishedName(randomBytes(4).toString('hex')))
  const landed = pipeline(
    Readable.fromWeb(encrypted as Parameters<typeof Readable.fromWeb>[0]),
    createWriteStream(unfinished, { mode: 0o600, flush: true }),
  )
  const put: Put = async (bytes) => {
    if (!compress.write(bytes)) await Promise.race([once(compress, 'drain'), landed])
  }
  try {
    // A disk that is full shows in `landed`; what is being read meanwhile is not waited for then.
    const result = await Promise.race([write(put), landed.then(() => endedTooEarly())])
    compress.end()
    await landed
    renameSync(unfinished, join(folder, nameOf(result)))
    syncFolder(folder)
    return result
  } catch (error) {
    compress.destroy()
    await landed.catch(() => undefined)
    rmSync(unfinished, { force: true })
    throw error
  }
}

/** What `writeSealed` was given, piece by piece. Throws a BackupProblem where the file or the identity is not the right one. */
export async function* readSealed(file: string, identities: readonly string[]): AsyncGenerator<Uint8Array> {
  if (!existsSync(file)) throw new BackupProblem(`There is no file ${file}.`)
  const { Decrypter } = await import('age-encryption')
  const decrypter = new Decrypter()
  for (const identity of identities) decrypter.addIdentity(identity)
  const source = createReadStream(file)
  const opened = await decrypter.decrypt(webStreamOf(source)).catch((error: unknown) => {
    source.destroy()
    throw new BackupProblem(whyClosed(file, error), { cause: error })
  })
  const plain = createZstdDecompress()
  const read = pipeline(Readable.fromWeb(opened as Parameters<typeof Readable.fromWeb>[0]), plain)
  read.catch(() => undefined)
  try {
    yield* plain
    await read
  } catch (cause) {
    throw new BackupProblem(
      `${file} is damaged: it was cut short or changed after it was made. Use another copy of it, or an older backup.`,
      { cause },
    )
  } finally {
    source.destroy()
  }
}

const webStreamOf = (stream: Readable) => Readable.toWeb(stream) as ReadableStream<Uint8Array>

const endedTooEarly = (): never => {
  throw new Error('the file was closed before everything was written')
}

function whyClosed(file: string, error: unknown): string {
  const words = error instanceof Error ? error.message : String(error)
  if (words.startsWith('no identity matched'))
    return `${file} was made for another key. Give the identity that was shown when its key was made.`
  return `${file} cannot be opened: it is not an encrypted backup, or its beginning is damaged (${words}).`
}
