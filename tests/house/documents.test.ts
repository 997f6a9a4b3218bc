import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { isWritten, repositoryFiles, root, textOf } from './repository-files.ts'

const files = repositoryFiles()
const documents = files.filter(
  (file) => file === 'README.md' || file === 'DEVELOPERS.md' || /^docs\/.*\.md$/.test(file),
)
const scripts = new Set(Object.keys(JSON.parse(textOf('package.json')).scripts))
/** What npm does of itself. */
const ownWords = new Set(['ci', 'install', 'install-scripts', 'audit'])

/** Script names that a text calls by `npm run x`, `npm start` or `npm test` and that are not there. */
const missingScripts = (code: string): string[] =>
  [...code.matchAll(/(?:^|`|&& |[A-Z_]+=\S* )npm (?:-\S+ )*(?:run (?:-\S+ )*)?([a-z][\w:-]*)/gm)]
    .map(([, name = '']) => name)
    .filter((name) => name !== 'run' && !ownWords.has(name) && !scripts.has(name))

/** Code of a document: fenced blocks and text between backticks; prose about "npm registries" is no command. */
const codeOf = (text: string): string =>
  [...text.matchAll(/```[\s\S]*?```|`[^`\n]+`/g)].map(([code]) => code).join('\n')

const brokenLinks = (file: string, text: string): string[] =>
  [...text.matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target = '']) => target.replace(/#.*$/, ''))
    .filter((target) => target !== '' && !/^[a-z]+:/.test(target))
    .filter((target) => !existsSync(join(root, dirname(file), target)))

describe('the documents', () => {
  it('are found', () => {
    expect(documents).toEqual(expect.arrayContaining(['README.md', 'DEVELOPERS.md', 'docs/testing.md']))
  })

  it.each(documents)('%s names only npm commands that exist', (file) => {
    expect(missingScripts(codeOf(textOf(file)))).toEqual([])
  })

  it.each(documents)('%s links only to files that exist', (file) => {
    expect(brokenLinks(file, textOf(file))).toEqual([])
  })

  it('would be caught with a planted command or link', () => {
    const planted =
      'Do `npm run -s sell-sensors -- x`, `npm stat` or `PORT=4311 npm run lost`, then `npm ci && npm test`.'
    expect(missingScripts(codeOf(planted))).toEqual(['sell-sensors', 'stat', 'lost'])
    expect(brokenLinks('docs/x.md', '[a](nowhere.md#part) [b](testing.md) [c](https://example.com)')).toEqual(
      ['nowhere.md'],
    )
  })
})

/** The tests that a table of settled lines names and that are not there, and the lines that have two rows. */
const faultsOfTable = (text: string): string[] => {
  const tests = [...text.matchAll(/`([^`\s*]+\.test\.tsx?)`/g)].map(([, name = '']) => name)
  const rows = [...text.matchAll(/^\| ([A-Z]+\d+) \|/gm)].map(([, line = '']) => line)
  return [
    ...tests.filter((name) => !files.some((file) => `/${file}`.endsWith(`/${name}`))),
    ...rows.filter((line, index) => rows.indexOf(line) !== index),
  ]
}

describe('the trials', () => {
  it('name only tests that exist, and each line once', () => {
    expect(faultsOfTable(textOf('docs/trials.md'))).toEqual([])
  })

  it('would be caught with a planted test or line', () => {
    const planted = '| S1 | x | `tests/house/documents.test.ts`, `lost.test.ts` |\n| S1 | y | |\n| S2 | z | |'
    expect(faultsOfTable(planted)).toEqual(['lost.test.ts', 'S1'])
  })
})

const decisions = documents.filter((file) => file.startsWith('docs/decisions/'))

const faultsOfDecision = (text: string): string[] =>
  [
    /^# \d{4}\. \S/m,
    /^- Date: \d{4}-\d\d-\d\d$/m,
    /^- Status: \S/m,
    /^## Context$/m,
    /^## Decision$/m,
    /^## Consequences$/m,
  ]
    .filter((part) => !part.test(text))
    .map((part) => part.source)

const gapsIn = (files: readonly string[]): string[] =>
  files
    .map((file) => file.match(/\/(\d{4})-[a-z0-9-]+\.md$/)?.[1] ?? file)
    .toSorted()
    .filter((number, index) => number !== String(index + 1).padStart(4, '0'))

describe('the decisions', () => {
  it('are numbered from one on without gaps', () => {
    expect(decisions.length).toBeGreaterThan(0)
    expect(gapsIn(decisions)).toEqual([])
    expect(gapsIn(['docs/decisions/0001-one.md', 'docs/decisions/0003-three.md'])).toEqual(['0003'])
  })

  it.each(decisions)('%s has date, status, context, decision and consequences', (file) => {
    const text = textOf(file)
    expect(faultsOfDecision(text)).toEqual([])
    expect(text).toContain(`# ${file.match(/\d{4}/)?.[0]}. `)
    expect(faultsOfDecision(text.replace('## Consequences', '## After'))).toHaveLength(1)
  })
})

/** Put together here, so that this file is not its own finding. */
const notOurs = [
  ['/work', 'shared'].join('/'),
  ['seed', 'document'].join(' '),
  ['job', 'map'].join(' '),
  ['job', 'map'].join('-'),
]
/** Short codes of findings, by group and number: on screens and papers they would read as trouble codes. */
const shortCode =
  /\b(?:A[1-35-8]|B[1-6]|C(?:[1-9]|1[0-4])|D[1-8]|E(?:[1-9]|1[0-5])|F[1-9]|G[1-8]|J[12]|I[1-4])\b/g

/** Prose of a file: a document whole, of code only the comments (data such as sensor IDs look like short codes). */
const proseOf = (file: string, text: string): string => {
  // The lines of the trials have such numbers too; that page alone names them.
  if (file === 'docs/trials.md') return ''
  if (file.endsWith('.md')) return text
  return /\.(ts|tsx|mjs|css|prisma)$/.test(file)
    ? [...text.matchAll(/\/\*[\s\S]*?\*\/|(?:^|\s)\/\/.*$/gm)].map(([comment]) => comment).join('\n')
    : ''
}

const strangeWordsIn = (file: string, text: string): string[] => [
  ...notOurs.filter((words) => text.toLowerCase().includes(words)),
  ...[...proseOf(file, text).matchAll(shortCode)].map(([code]) => code),
]

describe('every file of the repository', () => {
  it('refers to our own documents only', () => {
    const written = repositoryFiles().filter(isWritten)
    expect(written.length).toBeGreaterThan(500)
    const found = written.flatMap((file) =>
      strangeWordsIn(file, textOf(file)).map((words) => `${file}: ${words}`),
    )
    expect(found).toEqual([])
  })

  it('would be caught with a planted word', () => {
    const [folder = '', , notes = ''] = notOurs
    expect(strangeWordsIn('docs/x.md', `See ${folder}/x and the ${notes}.`)).toEqual([folder, notes])
    expect(strangeWordsIn('x.ts', `/** Rule ${'C'}5 of the list. */\nconst id = '${'E'}7'\n`)).toEqual([
      `${'C'}5`,
    ])
  })
})
