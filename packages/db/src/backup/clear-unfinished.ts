import { readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { isAlive } from '../embedded/lock-file.ts'

const pattern = /^unfinished-(\d+)-[0-9a-f]+\.part$/

/** The name of a file that this process is still writing. */
export const unfinishedName = (random: string): string => `unfinished-${process.pid}-${random}.part`

/** Removes what processes left that were killed while they wrote. */
export function clearUnfinished(folder: string): void {
  for (const name of readdirSync(folder)) {
    const writer = Number(pattern.exec(name)?.[1] ?? Number.NaN)
    if (!Number.isNaN(writer) && !isAlive(writer)) rmSync(join(folder, name), { force: true })
  }
}
