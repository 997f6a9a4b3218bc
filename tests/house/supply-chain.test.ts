import { execFileSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import { licensesPage, lockedPackages } from '../../apps/api/src/commands/licenses-page.ts'
import { repositoryFiles, root, textOf } from './repository-files.ts'

const Manifest = z.object({
  dependencies: z.record(z.string(), z.string()).default({}),
  devDependencies: z.record(z.string(), z.string()).default({}),
  optionalDependencies: z.record(z.string(), z.string()).default({}),
  scripts: z.record(z.string(), z.string()).default({}),
  allowScripts: z.record(z.string(), z.boolean()).default({}),
})
const manifests = repositoryFiles().filter((file) => /(?:^|\/)package\.json$/.test(file))
const locked = lockedPackages(textOf('package-lock.json'))

/** `1.2.3`, `1.2.3-beta.4`, or another name with one. */
const exact = /^(?:npm:[@\w/.-]+@)?\d+\.\d+\.\d+(?:-[\w.]+)?$/

const looseVersions = (manifest: string): string[] => {
  const { dependencies, devDependencies, optionalDependencies } = Manifest.parse(JSON.parse(manifest))
  return Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies })
    .filter(([, version]) => !exact.test(version))
    .map(([name, version]) => `${name} ${version}`)
}

describe('the manifests', () => {
  it.each(manifests)('%s names one version of each package', (file) => {
    expect(looseVersions(textOf(file))).toEqual([])
  })

  it('would be caught with a range', () => {
    const planted = { dependencies: { one: '^1.0.0', two: '2.0.0', three: '*' } }
    expect(looseVersions(JSON.stringify(planted))).toEqual(['one ^1.0.0', 'three *'])
  })

  it('write the database client and link PostgreSQL after npm ci, so that every command works on a fresh clone', () => {
    const prepare = 'apps/api/src/commands/prepare.ts'
    expect(Manifest.parse(JSON.parse(textOf('package.json'))).scripts.prepare).toBe(`node ${prepare}`)
    expect([...textOf(prepare).matchAll(/await statusOf\('([^']+)'\)/g)].map(([, file]) => file)).toEqual([
      'packages/db/src/commands/generate.ts',
      'packages/db/src/commands/link-libraries.ts',
    ])
  })
})

describe('install scripts', () => {
  it('are refused for each package that has one', () => {
    const { allowScripts } = Manifest.parse(JSON.parse(textOf('package.json')))
    const wanting = locked.filter(({ hasInstallScript }) => hasInstallScript).map(({ name }) => name)
    expect(wanting.length).toBeGreaterThan(0)
    expect(allowScripts).toEqual(Object.fromEntries(wanting.map((name) => [name, false])))
  })
})

/** Free licenses that let a shop run and pass on what we made; the weak copyleft ones only as a library of their own. */
const allowedLicenses = new Set([
  ...['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BlueOak-1.0.0', 'CC-BY-4.0', 'CC0-1.0'],
  ...['EPL-2.0', 'ISC', 'LGPL-3.0-or-later', 'MIT', 'MIT-0', 'MPL-2.0', 'OFL-1.1', 'Unlicense', 'Zlib'],
])
const isAllowed = (license: string): boolean =>
  license
    .replaceAll(/[()]/g, '')
    .split(/ (?:and|or) /i)
    .every((one) => allowedLicenses.has(one))

describe('licenses', () => {
  it('are all on the list', () => {
    expect(locked.filter(({ license }) => !isAllowed(license))).toEqual([])
    expect(isAllowed('AGPL-3.0-only')).toBe(false)
    expect(isAllowed('not named')).toBe(false)
  })

  it('are listed in docs/licenses.md; else run npm run docs:licenses', () => {
    expect(textOf('docs/licenses.md')).toBe(licensesPage(locked))
  })
})

const Bill = z.object({
  bomFormat: z.literal('CycloneDX'),
  components: z.array(
    z.object({
      purl: z.string(),
      version: z.string(),
      properties: z.array(z.object({ name: z.string() })).default([]),
      hashes: z.array(z.object({ alg: z.string(), content: z.string() })).default([]),
    }),
  ),
})

describe('the bill of materials', () => {
  it('names what the product runs, each package with its digest, and no tool', () => {
    const bill = Bill.parse(
      JSON.parse(execFileSync('npm', ['run', '-s', 'sbom'], { cwd: root, encoding: 'utf8' })),
    )
    const others = bill.components.filter(
      ({ properties }) => !properties.some(({ name }) => name === 'cdx:npm:package:private'),
    )
    const digestOf = new Map(others.map(({ purl, hashes }) => [decodeURIComponent(purl), hashes[0]?.alg]))
    for (const name of ['fastify', 'pdfkit', 'react', '@prisma/client'])
      expect(digestOf.get(`pkg:npm/${name}@${locked.find((one) => one.name === name)?.version}`)).toBe(
        'SHA-512',
      )
    expect([...digestOf.keys()].filter((purl) => /\/(?:vitest|playwright-core)@/.test(purl))).toEqual([])
    expect([...digestOf].filter(([, digest]) => digest === undefined)).toEqual([])
  })
})
