import { readdirSync } from 'node:fs'
import { join } from 'node:path'

export const sources = 'packages/reckoning/src'

/**
 * Files whose whole content is words for people or a page of them. A mutant there changes a word, and the tests that
 * hold the words (length, completeness, freshness of the page) are about them as a whole.
 */
const wordsOnly = [
  'catalog/confidence-words.ts',
  'catalog/en-findings.ts',
  'catalog/finding-titles.ts',
  'cautions/work-cautions.ts',
  'diagnosis/document.ts',
]

export type Room = {
  readonly name: string
  /** Globs of what is mutated. */
  readonly mutate: readonly string[]
  /** Globs of the unit tests that its mutants have to get past, besides every published check. */
  readonly tests: readonly string[]
}

/** Each folder of reckoning is a room; the files that lie beside the folders are one more, which all tests guard. */
export const rooms = (root: string): Room[] => [
  ...readdirSync(join(root, sources), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => roomOf(name, `${sources}/${name}/**/*.ts`, testedWith[name] ?? [name])),
  roomOf('shared', `${sources}/*.ts`, ['*']),
]

const roomOf = (name: string, mutated: string, tests: readonly string[]): Room => ({
  name,
  mutate: [
    mutated,
    '!**/*.test.ts',
    '!**/*.test-support.ts',
    ...wordsOnly.map((file) => `!${sources}/${file}`),
  ],
  tests: tests.map((test) => `${sources}/${test}/**/*.test.ts`),
})

/** Rooms whose work is tested by the room that uses it, too. */
const testedWith: Readonly<Record<string, readonly string[]>> = {
  catalog: ['catalog', 'diagnosis'],
  evidence: ['evidence', 'diagnosis'],
}
