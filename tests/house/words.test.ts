import { findingSentences } from '@bayledger/wording/en/finding-sentences'
import type { Sentence } from '@bayledger/wording/findings'
import { describe, expect, it } from 'vitest'
import { repositoryFiles, textOf } from './repository-files.ts'

/** The fixed parts of a sentence that are long enough to be nobody else's words. */
const partsOf = (sentence: string): string[] =>
  sentence.split(/\{[^}]+\}/).filter((part) => part.trim().length >= 30)

const sentences: readonly Sentence[] = Object.values(findingSentences)

const parts = sentences
  .flatMap(({ forms = {}, ...usual }) => [usual, ...Object.values(forms)])
  .flatMap((wordings) => Object.values(wordings))
  .flatMap(partsOf)

const copiesIn = (text: string): string[] => {
  const oneLine = text.replaceAll("\\'", "'")
  return parts.filter((part) => oneLine.includes(part))
}

const sources = repositoryFiles().filter(
  (file) =>
    /^(apps|packages)\/[^/]+\/src\/.*\.tsx?$/.test(file) &&
    !/\.(test|test-support)\.tsx?$/.test(file) &&
    !file.includes('/generated/') &&
    !file.includes('/wording/src/en/'),
)

describe('what a customer reads of a finding', () => {
  it('is written in the wording room and nowhere else', () => {
    expect(parts.length).toBeGreaterThan(70)
    expect(sources.length).toBeGreaterThan(300)
    expect(sources.flatMap((file) => copiesIn(textOf(file)).map((part) => `${file}: ${part}`))).toEqual([])
  })

  it('is no member of a rule: a rule gives figures, the wording room the sentence', () => {
    const rules = sources.filter((file) => file.includes('/diagnosis/rules/'))
    expect(rules.length).toBeGreaterThan(10)
    for (const file of rules) expect(textOf(file), file).not.toMatch(/^\s*customer(Sentence|Words)?:/m)
  })

  it('would be caught where it is copied', () => {
    expect(copiesIn(`const words = '${parts[0]}'`)).toContain(parts[0])
  })
})

/** Words that lay what is open at somebody's door. */
const accusing =
  /\b(nobody|no one) (has |had |ever )?(looked|checked|verified|recorded|asked|gauged|torqued)\b|\bforgot(ten to)?\b|\bneglect|\byou (have )?failed\b|\bshould have (been )?(done|checked|looked|recorded)\b|\byour (fault|mistake)\b/i

const withoutComments = (text: string): string =>
  text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '')

describe('what is left open', () => {
  it('is said in words that accuse nobody, on the desk, in the bay, on the phone and on paper', () => {
    const said = repositoryFiles().filter(
      (file) =>
        /^(packages\/wording\/src\/en|packages\/report\/src|apps\/web\/src)\/.*\.tsx?$/.test(file) &&
        !/\.test\.tsx?$/.test(file),
    )
    expect(said.length).toBeGreaterThan(200)
    expect(
      said.flatMap((file) => {
        const found = accusing.exec(withoutComments(textOf(file)))
        return found ? [`${file}: ${found[0]}`] : []
      }),
    ).toEqual([])
  })

  it('would be caught where it accuses', () => {
    for (const words of [
      '64 things that nobody has looked at',
      'You forgot to gauge the spare',
      'The tire should have been checked',
    ])
      expect(accusing.test(words), words).toBe(true)
    expect(accusing.test('64 more facts can still be read')).toBe(false)
  })
})

/** Words of our own that an advisor or a customer stumbled over (line D33 of the trials). */
const gone =
  /run low damage possible|>\s*refused entries|['"`]refused entries['"`],? *to=|let a tablet in|what today[’']s rules would say['"`<]|end without a report|the ledger does not take this/i

describe('words of our own', () => {
  it('that went are on no screen and on no paper', () => {
    const said = repositoryFiles().filter(
      (file) =>
        /^(packages\/wording\/src|packages\/report\/src|apps\/web\/src)\/.*\.tsx?$/.test(file) &&
        !/\.test\.tsx?$/.test(file),
    )
    expect(said.length).toBeGreaterThan(200)
    expect(said.filter((file) => gone.test(withoutComments(textOf(file))))).toEqual([])
  })

  it('would be caught where they come back', () => {
    for (const words of ['<h1>Refused entries</h1>', 'Let a tablet in', 'End without a report'])
      expect(gone.test(words), words).toBe(true)
  })
})
