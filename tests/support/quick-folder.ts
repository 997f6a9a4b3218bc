import { mkdtempSync, statfsSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const inMemory = '/dev/shm'
const roomNeeded = 2_000_000_000

/**
 * A folder for one test, in memory where this machine has room for it: a database flushes there without waiting for a disk. A
 * program that is killed loses nothing there either; only programs may not be run from it.
 */
export const makeQuickFolder = (prefix: string): string =>
  mkdtempSync(join(hasRoomInMemory() ? inMemory : tmpdir(), prefix))

const hasRoomInMemory = (): boolean => {
  try {
    const { bavail, bsize } = statfsSync(inMemory)
    return bavail * bsize > roomNeeded
  } catch {
    return false
  }
}
