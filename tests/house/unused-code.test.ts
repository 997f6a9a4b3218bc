import { execFileSync, spawnSync } from 'node:child_process'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..', '..')
const trees: string[] = []

/** The tree as git would keep it, with this machine's packages, so that something can be planted in it. */
const copyOfTree = (): { folder: string; sources: string[] } => {
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-planted-'))
  trees.push(folder)
  const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
    encoding: 'utf8',
  })
    .split('\n')
    .filter((file) => file !== '' && !file.startsWith('docs/'))
  for (const file of files) {
    mkdirSync(dirname(join(folder, file)), { recursive: true })
    cpSync(join(root, file), join(folder, file))
  }
  cpSync(join(root, 'packages/db/src/generated'), join(folder, 'packages/db/src/generated'), {
    recursive: true,
  })
  linkPackages(folder)
  return {
    folder,
    sources: files.filter((file) => /^(apps|packages)\/[^/]+\/(src|test-support)\/.*\.tsx?$/.test(file)),
  }
}

/** This machine's packages, but the workspaces' own links lead into the copy. */
const linkPackages = (folder: string): void => {
  const modules = join(folder, 'node_modules')
  mkdirSync(join(modules, '@bayledger'), { recursive: true })
  for (const name of readdirSync(join(root, 'node_modules')))
    if (name !== '@bayledger' && !name.startsWith('.planted'))
      symlinkSync(join(root, 'node_modules', name), join(modules, name))
  for (const place of ['apps', 'packages'])
    for (const name of readdirSync(join(folder, place)))
      symlinkSync(join(folder, place, name), join(modules, '@bayledger', name))
}

/** What is wrong with one file, by kind: `exports`, `files`, `dependencies` and so on. */
type Issue = { readonly file: string } & { readonly [kind: string]: string | readonly { name: string }[] }
type KnipReport = { readonly issues: readonly Issue[] }

const isPlanted = (name: string): boolean => name === 'plantedAndUnused'

/** Each issue as `kind: file name`, as far as it was not planted. */
const notPlanted = (issues: readonly Issue[], plantedFile: string): string[] =>
  issues.flatMap(({ file, ...kinds }) =>
    Object.entries(kinds).flatMap(([kind, found]) =>
      Array.isArray(found) && file !== plantedFile
        ? found.flatMap(({ name }) => (isPlanted(name) ? [] : [`${kind}: ${file} ${name}`]))
        : [],
    ),
  )

const knip = (cwd: string): { readonly status: number | null; readonly report: KnipReport } => {
  const run = spawnSync(join(root, 'node_modules', '.bin', 'knip'), ['--no-progress', '--reporter', 'json'], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 256 * 1024 * 1024,
  })
  return { status: run.status, report: JSON.parse(run.stdout) as KnipReport }
}

/** This is the check of `npm test` too: beside what is planted, nothing may be found. */
describe('the unused-code check', () => {
  afterAll(() => {
    for (const tree of trees) rmSync(tree, { recursive: true, force: true })
  })

  it('finds nothing unused but what is planted, in every module that exists: an export in each, and a file that nobody imports', () => {
    const { folder, sources } = copyOfTree()
    const planted = sources.filter(
      (file) => !/\.(test|test-support)\.tsx?$/.test(file) && !file.endsWith('.d.ts'),
    )
    for (const file of planted) {
      const path = join(folder, file)
      writeFileSync(path, `${readFileSync(path, 'utf8')}\nexport const plantedAndUnused = 1\n`)
    }
    const nobodys = 'apps/api/src/planted.ts'
    writeFileSync(join(folder, nobodys), 'const planted = 1\nconsole.log(planted)\n')
    const { status, report } = knip(folder)
    const found = new Set(
      report.issues
        .filter(({ exports = [] }) => Array.isArray(exports) && exports.some(({ name }) => isPlanted(name)))
        .map(({ file }) => file),
    )
    expect(planted.filter((file) => !found.has(file))).toEqual([])
    expect(found.size).toBeGreaterThan(200)
    expect(report.issues.filter(({ files = [] }) => files.length > 0).map(({ file }) => file)).toEqual([
      nobodys,
    ])
    expect(notPlanted(report.issues, nobodys)).toEqual([])
    expect(status).not.toBe(0)
  })
})
