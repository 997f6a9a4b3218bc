import { globSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { strykerPlugins } from '../mutation/prose.ts'
import { rooms, wordsOnly } from '../mutation/rooms.ts'
import { sampled } from '../mutation/sample.ts'
import { percentOf, scoreOf, scoreWords, sumOf, survivorsOf } from '../mutation/score.ts'
import { repositoryFiles, root } from './repository-files.ts'

const sources = repositoryFiles().filter(
  (file) => file.startsWith('packages/reckoning/src/') && /(?<!\.test|\.test-support)\.ts$/.test(file),
)

const filesOf = (globs: readonly string[]): string[] =>
  globSync(
    globs.filter((glob) => !glob.startsWith('!')),
    { cwd: root, exclude: globs.filter((glob) => glob.startsWith('!')).map((glob) => glob.slice(1)) },
  )

describe('the rooms of a mutation run', () => {
  it('hold every source of reckoning once, except those of words only', () => {
    const words = wordsOnly.map((file) => `packages/reckoning/src/${file}`)
    expect(sources).toEqual(expect.arrayContaining(words))
    expect(
      rooms(root)
        .flatMap(({ mutate }) => filesOf(mutate))
        .sort(),
    ).toEqual(sources.filter((file) => !words.includes(file)).sort())
  })

  it('each have tests', () => {
    for (const { name, tests } of rooms(root)) expect(filesOf(tests).length, name).toBeGreaterThan(0)
  })

  it('are taken in part by every nth statement', () => {
    const all = sampled(root, ['packages/reckoning/src/torque/*.ts', '!**/*.test.ts'], 1)
    const third = sampled(root, ['packages/reckoning/src/torque/*.ts', '!**/*.test.ts'], 3)
    expect(all.at(-1)).toBe('!**/*.test.ts')
    expect(all[0]).toMatch(/^packages\/reckoning\/src\/torque\/[a-z-]+\.ts:\d+-\d+$/)
    expect(third.slice(0, -1)).toEqual(all.slice(0, -1).filter((_, at) => at % 3 === 0))
  })
})

describe('the score of a mutation run', () => {
  const mutant = (status: string, line: number) =>
    ({
      status,
      fileName: `${root}/tests/mutation/prose.ts`,
      replacement: 'null',
      location: { start: { line, column: 1 }, end: { line, column: 5 } },
    }) as Parameters<typeof scoreOf>[0][number]
  const mutants = ['Killed', 'Timeout', 'Survived', 'NoCoverage', 'Ignored'].map((status) =>
    mutant(status, 1),
  )

  it('counts what no test reaches as survived, and what was left out not at all', () => {
    expect(scoreOf(mutants)).toEqual({ noticed: 2, survived: 2 })
    expect(scoreWords(scoreOf(mutants))).toBe('50.0 %, 2 of 4 noticed')
    expect(percentOf(sumOf([scoreOf(mutants), { noticed: 6, survived: 0 }]))).toBe(80)
    expect(percentOf({ noticed: 0, survived: 0 })).toBe(100)
  })

  it('names each survivor with the original code', () => {
    expect(survivorsOf(root, mutants)).toEqual([
      '  tests/mutation/prose.ts:1: type became null',
      '  tests/mutation/prose.ts:1: type became null, reached by no test',
    ])
  })
})

describe('what a mutation run leaves as it is', () => {
  const shouldIgnore = (type: string, value?: unknown) =>
    strykerPlugins[0]?.value.shouldIgnore({ node: { type, value } })

  it('is a sentence, never a code or a formula', () => {
    expect(shouldIgnore('StringLiteral', 'The light is on.')).toBe('a sentence for people')
    expect(shouldIgnore('StringLiteral', 'tire-low')).toBeUndefined()
    expect(shouldIgnore('TemplateLiteral')).toBeUndefined()
    expect(shouldIgnore('BinaryExpression')).toBeUndefined()
  })
})
