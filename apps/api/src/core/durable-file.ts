import { mkdirSync, renameSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { syncFolder } from '@bayledger/db/embedded/sync-folder'

/** Makes a folder that only its owner opens, and those above it, so that they outlast a power cut. */
export const makeDurableFolder = (folder: string): void => {
  const first = mkdirSync(folder, { recursive: true, mode: 0o700 })
  if (first === undefined) return
  for (let made = folder; made.length >= first.length; made = dirname(made)) syncFolder(dirname(made))
}

/** Writes a file that only its owner reads: whole and on the disk, or not at all. */
export const writeDurably = (file: string, content: string): void => {
  makeDurableFolder(dirname(file))
  writeFileSync(`${file}.new`, content, { mode: 0o600, flush: true })
  renameSync(`${file}.new`, file)
  syncFolder(dirname(file))
}
