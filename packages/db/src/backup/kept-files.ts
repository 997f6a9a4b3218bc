import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { filesBelow } from './files-below.ts'
import { readTar } from './read-tar.ts'
import { refuseOutside } from './refuse-outside.ts'
import { readSealed, writeSealed } from './sealed-file.ts'
import { BLOCK_BYTES, paddingAfter, tarHeader } from './tar-header.ts'
import { unpackInto } from './unpack-into.ts'

/** Folders whose files are kept beside the log, by the name that they have in a data folder. */
export type FoldersToKeep = { readonly signing: string; readonly digests: string }

const pattern = /^file-[0-9a-f]{32}\.age$/

/**
 * Keeps the files that belong to a shop and are no rows, each once and encrypted, in the folder of a line: what was
 * written since the backup, such as a day's digest. `kept` remembers what need not be read again.
 */
export async function keepFiles(
  line: string,
  folders: FoldersToKeep,
  recipients: readonly string[],
  kept: Set<string>,
): Promise<void> {
  for (const [name, folder] of Object.entries(folders))
    for (const below of filesBelow(folder)) {
      const path = `${name}/${below}`
      if (kept.has(`${line} ${path}`)) continue
      const content = readFileSync(join(folder, below))
      const hash = createHash('sha256').update(`${path}\n`).update(content).digest('hex')
      const file = join(line, `file-${hash.slice(0, 32)}.age`)
      if (!existsSync(file))
        await writeSealed(file, recipients, async (put) => {
          await put(tarHeader({ path, kind: 'file', size: content.length }))
          await put(content)
          await put(new Uint8Array(paddingAfter(content.length) + 2 * BLOCK_BYTES))
        })
      kept.add(`${line} ${path}`)
    }
}

/** Puts the kept files of a line into a data folder where they are missing. */
export async function restoreKeptFiles(
  line: string,
  dataFolder: string,
  identities: readonly string[],
): Promise<void> {
  for (const name of readdirSync(line).filter((file) => pattern.test(file)))
    for await (const entry of readTar(readSealed(join(line, name), identities))) {
      refuseOutside(entry.path)
      if (!existsSync(join(dataFolder, entry.path))) await unpackInto(dataFolder, entry)
    }
}
