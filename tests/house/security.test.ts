import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { contract } from '@bayledger/contract/contract'
import type { Endpoint } from '@bayledger/contract/endpoint'
import { serviceMay } from '@bayledger/db/roles/service-may'
import { describe, expect, it } from 'vitest'
import { ownWords } from '../../apps/api/src/core/often-used-passwords.ts'
import { bayLimits, deskLimits } from '../../apps/api/src/features/sessions/policy.ts'
import { asvsNumbers } from './asvs-numbers.ts'
import { repositoryFiles, root, textOf } from './repository-files.ts'

const table = textOf('docs/asvs.md')
const page = textOf('docs/security.md')

type Row = {
  readonly number: string
  readonly state: string
  readonly how: string
  readonly tests: readonly { readonly file: string; readonly title: string | undefined }[]
}

const rowsOf = (text: string): Row[] =>
  [...text.matchAll(/^\| (V[\d.]+) \| ([^|]+) \| ([^|]+) \| ([^|]+) \| ([^|]*) \|$/gm)].map(
    ([, number = '', , state = '', how = '', tests = '']) => ({
      number,
      state,
      how,
      tests: [...tests.matchAll(/`([^`]+)`(?: "([^"]+)")?/g)].map(([, file = '', title]) => ({
        file,
        title,
      })),
    }),
  )
const rows = rowsOf(table)

/** What is wrong with the tests that a row names: a file that is not there, or has no such words. */
const faultsOf = ({ number, tests }: Row): string[] =>
  tests.flatMap(({ file, title }) => {
    if (!/\.test\.tsx?$/.test(file) || !existsSync(join(root, file))) return [`${number}: ${file}`]
    const text = textOf(file).replaceAll("\\'", "'")
    return title === undefined || text.includes(title) ? [] : [`${number}: ${file} "${title}"`]
  })

describe('docs/asvs.md', () => {
  it('has each requirement of the levels 1 and 2 once, in order', () => {
    expect(asvsNumbers).toHaveLength(253)
    expect(rows.map(({ number }) => number)).toEqual(asvsNumbers)
  })

  it('says of each whether it is met, and how or why not', () => {
    const states = new Set(['met', 'does not apply', 'not met'])
    expect(rows.filter(({ state, how }) => !states.has(state) || how.trim().length < 3)).toEqual([])
  })

  it('names tests that are there', () => {
    expect(rows.flatMap(faultsOf)).toEqual([])
    const planted =
      '| V1.1.1 | a | met | b | `tests/house/lost.test.ts`; `tests/house/words.test.ts` "a lost title" |'
    expect(rowsOf(planted).flatMap(faultsOf)).toEqual([
      'V1.1.1: tests/house/lost.test.ts',
      'V1.1.1: tests/house/words.test.ts "a lost title"',
    ])
  })

  it('counts what it holds, most of it with a test', () => {
    const of = (state: string) => rows.filter((row) => row.state === state).length
    const tested = rows.filter(({ tests }) => tests.length > 0).length
    expect(tested).toBeGreaterThanOrEqual(230)
    expect(table).toContain(`| ${of('met')} | ${of('does not apply')} | ${of('not met')} | 253 | ${tested} |`)
  })
})

/** The part of the page under a heading. */
const part = (heading: string): string => page.split(`\n## ${heading}\n`)[1]?.split('\n## ')[0] ?? ''

/** As the page writes a number of bytes. */
const sizeWords = (bytes: number): string =>
  bytes % 2 ** 20 === 0
    ? `${bytes / 2 ** 20} MB`
    : bytes % 1024 === 0
      ? `${bytes / 1024} KB`
      : `${bytes / 1e6} MB`

describe('docs/security.md', () => {
  it('gives every table a level', () => {
    const named = [...part('Levels of protection').matchAll(/`([a-z_]+)`/g)].map(([, name]) => name)
    expect(named.toSorted()).toEqual(Object.keys(serviceMay).toSorted())
  })

  it('names every limit of a route', () => {
    const endpoints: readonly Endpoint[] = contract
    // Lists that are read as CSV share a line.
    const limited = endpoints.filter(
      ({ triesPerMinute, bodyLimitBytes, bodyUnreadUpTo, patienceSeconds }) =>
        (triesPerMinute ?? bodyLimitBytes ?? bodyUnreadUpTo) !== undefined && patienceSeconds === undefined,
    )
    const lines = limited.map(({ method, path, triesPerMinute, bodyLimitBytes, bodyUnreadUpTo }) => {
      const size = bodyLimitBytes ?? bodyUnreadUpTo
      return `| \`${method} ${path}\` | ${triesPerMinute ?? 'as all'} | ${size === undefined ? 'as all' : sizeWords(size)} |`
    })
    const written = part('Limits')
      .split('\n')
      .filter((line) => line.startsWith('| `'))
    expect(written.toSorted()).toEqual(lines.toSorted())
  })

  it('says how long sessions last', () => {
    const minutes = (ms: number) => `${ms / 60_000} minutes`
    const hours = (ms: number) => `${ms / 3_600_000} hours`
    expect(part('Sessions')).toContain(
      `| ends without use after | ${minutes(deskLimits.idleMs)} | ${hours(bayLimits.idleMs)};`,
    )
    expect(part('Sessions')).toContain(
      `| ends in any case after | ${hours(deskLimits.absoluteMs)} | ${hours(bayLimits.absoluteMs)} |`,
    )
  })

  it('lists the words that nobody may take for a password', () => {
    expect(ownWords.filter((word) => !part('Signing in').includes(`\`${word}\``))).toEqual([])
  })

  it('names every key file', () => {
    const files = repositoryFiles()
      .filter(
        (file) =>
          /^(?:apps\/api|packages\/(?:db|report))\/src\/.*\.ts$/.test(file) && !/\.test\.ts$/.test(file),
      )
      .flatMap((file) =>
        [...textOf(file).matchAll(/'([a-z-]+\.pem|backup-recipients\.txt)'/g)].map(([, name = '']) => name),
      )
    expect(new Set(files).size).toBeGreaterThan(6)
    expect([...new Set(files)].filter((name) => !part('Keys').includes(`\`${name}\``))).toEqual([])
  })
})
