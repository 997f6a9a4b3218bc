import { describe, expect, it } from 'vitest'
import { repositoryFiles, textOf } from './repository-files.ts'

const most = 400

/** Too long, by name and number of lines; an idea that needs more is two ideas. */
const tooLong = (files: readonly (readonly [file: string, text: string])[]): string[] =>
  files
    .map(([file, text]) => [file, text.trimEnd().split('\n').length] as const)
    .filter(([, lines]) => lines > most)
    .map(([file, lines]) => `${file}: ${lines} lines; split it, ${most} are allowed`)

/** Names that say nothing: whatever would be in such a file has a name of its own. */
const sayingNothing = (files: readonly string[]): string[] =>
  files.filter((file) => /(^|\/)(index|utils?|helpers?|common|types|misc)\.tsx?$/.test(file))

const sources = repositoryFiles().filter(
  (file) => /\.(ts|tsx|mjs)$/.test(file) && !file.includes('/generated/'),
)

describe('a source file', () => {
  it('has one idea, and so at most 400 lines', () => {
    expect(sources.length).toBeGreaterThan(400)
    expect(tooLong(sources.map((file) => [file, textOf(file)] as const))).toEqual([])
    expect(tooLong([['packages/x/src/planted.ts', 'a\n'.repeat(401)]])).toHaveLength(1)
    expect(tooLong([['packages/x/src/planted.ts', 'a\n'.repeat(400)]])).toHaveLength(0)
  })

  it('is named for its idea', () => {
    expect(sayingNothing(sources)).toEqual([])
    expect(
      sayingNothing(['packages/x/src/utils.ts', 'apps/web/src/index.tsx', 'packages/x/src/index-card.ts']),
    ).toHaveLength(2)
  })
})
