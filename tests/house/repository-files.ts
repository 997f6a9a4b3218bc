import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

export const root = join(import.meta.dirname, '..', '..')

/** Every file that git keeps or would keep and that is still there, from the root, with `/`. */
export const repositoryFiles = (): string[] => {
  const list = (...flags: string[]) =>
    execFileSync('git', ['ls-files', ...flags], { cwd: root, encoding: 'utf8' })
      .split('\n')
      .filter((file) => file !== '')
  const gone = new Set(list('--deleted'))
  return [...new Set(list('--cached', '--others', '--exclude-standard'))].filter((file) => !gone.has(file))
}

export const textOf = (file: string): string => readFileSync(join(root, file), 'utf8')

/** Files that people write as text; pictures, lock files and other machine output aside. */
export const isWritten = (file: string): boolean =>
  /\.(ts|tsx|mjs|md|json|css|html|sql|prisma|yml|yaml)$/.test(file) && file !== 'package-lock.json'
