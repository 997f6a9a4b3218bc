import { existsSync, lstatSync, readFileSync, symlinkSync } from 'node:fs'
import { basename, dirname, join, relative } from 'node:path'
import { EmbeddedPostgresProblem } from './problem.ts'

type Link = { readonly source: string; readonly target: string }

/**
 * npm packages cannot carry symbolic links, so the package lists those its libraries need and makes them in
 * an install script. Installs here run without scripts: the links are made at the first start instead.
 * Safe to run twice, and by two processes at once.
 */
export function linkSharedLibraries(packageRoot: string): void {
  const list = join(packageRoot, 'native', 'pg-symlinks.json')
  if (!existsSync(list)) return
  for (const { source, target } of readLinks(list)) {
    const link = join(packageRoot, target)
    if (isThere(link)) continue
    try {
      symlinkSync(relative(dirname(link), join(packageRoot, source)), link)
    } catch (error) {
      if (isThere(link)) continue
      throw new EmbeddedPostgresProblem(
        `PostgreSQL needs the link ${basename(link)} in ${dirname(link)}, and it cannot be made (${String(error)}). Start once as the user who ran "npm ci".`,
      )
    }
  }
}

function isThere(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false }) !== undefined
}

function readLinks(list: string): Link[] {
  const parsed: unknown = JSON.parse(readFileSync(list, 'utf8'))
  if (!Array.isArray(parsed) || !parsed.every(isLink)) {
    throw new EmbeddedPostgresProblem(`${list} is not a list of links. Run "npm ci" again.`)
  }
  return parsed
}

function isLink(value: unknown): value is Link {
  if (typeof value !== 'object' || value === null) return false
  return (
    'source' in value &&
    typeof value.source === 'string' &&
    'target' in value &&
    typeof value.target === 'string'
  )
}
