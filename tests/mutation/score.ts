import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import type Stryker from '@stryker-mutator/core'

type Mutant = Awaited<ReturnType<Stryker['runMutationTest']>>[number]

/** Mutants that a test noticed, by failing or by never ending, and those that none did. */
export type Score = { readonly noticed: number; readonly survived: number }

export const scoreOf = (mutants: readonly Mutant[]): Score => ({
  noticed: mutants.filter(({ status }) => status === 'Killed' || status === 'Timeout').length,
  survived: mutants.filter(isSurvivor).length,
})

export const sumOf = (scores: readonly Score[]): Score => ({
  noticed: scores.reduce((sum, { noticed }) => sum + noticed, 0),
  survived: scores.reduce((sum, { survived }) => sum + survived, 0),
})

/** Of a hundred mutants, how many were noticed; a room without any has nothing to notice. */
export const percentOf = ({ noticed, survived }: Score): number =>
  noticed + survived === 0 ? 100 : (100 * noticed) / (noticed + survived)

export const scoreWords = (score: Score): string =>
  `${percentOf(score).toFixed(1)} %, ${score.noticed} of ${score.noticed + score.survived} noticed`

/** A line for each survivor: where it is, the original code and what replaced it. */
export const survivorsOf = (root: string, mutants: readonly Mutant[]): string[] =>
  mutants.filter(isSurvivor).map(({ fileName, location, replacement, status }) => {
    const { start, end } = location
    const lines = readFileSync(fileName, 'utf8')
      .split('\n')
      .slice(start.line - 1, end.line)
    const was = lines.join('\n').slice(start.column - 1, lines.length === 1 ? end.column - 1 : undefined)
    const unreached = status === 'NoCoverage' ? ', reached by no test' : ''
    return `  ${relative(root, fileName)}:${start.line}: ${brief(was)} became ${brief(replacement ?? '')}${unreached}`
  })

const isSurvivor = ({ status }: Mutant): boolean => status === 'Survived' || status === 'NoCoverage'

const brief = (code: string): string => {
  const line = code.replace(/\s+/g, ' ')
  return line.length > 70 ? `${line.slice(0, 67)}...` : line
}
