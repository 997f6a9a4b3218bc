import { closeSync, fsyncSync, openSync } from 'node:fs'

/** Sees to it that the names in a folder are on the disk. Windows does so by itself. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return
  const handle = openSync(folder, 'r')
  fsyncSync(handle)
  closeSync(handle)
}
