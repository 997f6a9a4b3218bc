import { readdirSync } from 'node:fs'
import { join } from 'node:path'

const sources = 'packages/reckoning/src'
const published = 'tests/published/**/*.test.ts'

/** A part of reckoning that is mutated at a time. */
export type Room = {
  readonly name: string
  /** Globs of what is mutated. */
  readonly mutate: readonly string[]
  /** Globs of the tests that its mutants have to get past. */
  readonly tests: readonly string[]
}

/**
 * Each folder of reckoning is a room, guarded by its own unit tests and by every published check; the files that lie
 * beside the folders are one more, which all tests guard. The diagnosis is several, since it is the largest.
 */
export const rooms = (root: string): Room[] => [
  ...otherFolders(root).map((name) =>
    roomOf(name, [`${name}/**/*.ts`], [...testsIn(name), ...(alsoBy[name] ?? []), published]),
  ),
  roomOf(
    'beside',
    ['*.ts'],
    [`${sources}/*.test.ts`, ...testsIn(...otherFolders(root)), ...quickTests, published],
  ),
  ...foldersIn(join(root, sources, 'diagnosis'))
    .filter((name) => !onlyTests.includes(name))
    .map((name) => roomOf(`diagnosis/${name}`, [`diagnosis/${name}/**/*.ts`], diagnosisTests(name))),
  roomOf('diagnosis/beside', ['diagnosis/*.ts'], diagnosisTests('beside')),
]

/** Folders of the diagnosis that hold nothing but tests and their data. */
const onlyTests = ['cases', 'physics']

const otherFolders = (root: string): string[] =>
  foldersIn(join(root, sources)).filter((name) => name !== 'diagnosis')

const foldersIn = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)

const roomOf = (name: string, mutated: readonly string[], tests: readonly string[]): Room => ({
  name,
  mutate: [
    ...mutated.map((glob) => `${sources}/${glob}`),
    '!**/*.test.ts',
    '!**/*.test-support.ts',
    ...wordsOnly.map((file) => `!${sources}/${file}`),
  ],
  tests,
})

const testsIn = (...folders: readonly string[]): string[] =>
  folders.map((folder) => `${sources}/${folder}/**/*.test.ts`)

/** Tests of the diagnosis that reach every part of it and take little time. */
const quickTests = [
  ...['*', 'rules/*', 'engine/!(judge)'].map((tests) => `${sources}/diagnosis/${tests}.test.ts`),
  'tests/mutation/findings-said.test.ts',
]

/** Rooms whose work is tested by the diagnosis, too, which uses it. */
const alsoBy: Readonly<Record<string, readonly string[]>> = { evidence: quickTests }

/** Those that take long are run only where they are about that part. */
const diagnosisTests = (part: string): string[] => [
  ...quickTests,
  ...(longTests[part] ?? []).map((tests) => `${sources}/diagnosis/${tests}.test.ts`),
]

const longTests: Readonly<Record<string, readonly string[]>> = {
  checks: ['checks/*'],
  engine: ['engine/judge'],
  rules: ['engine/judge'],
  telltale: ['telltale/*'],
}

/**
 * Files whose whole content is words for people or a page of them. A mutant there changes a word, and the tests that
 * hold the words (length, completeness, freshness of the page) are about them as a whole.
 */
export const wordsOnly = ['cautions/work-cautions.ts']
