import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'

/**
 * The files below a folder by their paths in it, sorted; none where it is missing. Whole files only: what another process
 * is still writing has another name.
 */
export function filesBelow(folder: string): string[] {
  if (statSync(folder, { throwIfNoEntry: false }) === undefined) return []
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.(part|new)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .map((path) => path.replaceAll('\\', '/'))
    .toSorted()
}
