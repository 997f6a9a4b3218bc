import { describe, expect, it } from 'vitest'
import { sentencesIn, typedRefusalsIn } from './program-sentences.ts'
import { repositoryFiles, textOf } from './repository-files.ts'

const found = (belongs: (file: string) => boolean): string[] =>
  repositoryFiles()
    .filter((file) => /\.tsx?$/.test(file) && !/\.(test|test-support)\.tsx?$/.test(file) && belongs(file))
    .flatMap((file) => sentencesIn(file, textOf(file)).map((text) => `${file}: ${text}`))

/**
 * Not read here: what commands print (`commands`, the findings of `ledger:verify` in `proof`, and what the service prints
 * while it starts), stores, which hold SQL, and `words`, where the sentences belong.
 */
const answersRequests = (file: string): boolean =>
  /^apps\/api\/src\/(core|features|http)\/|^apps\/api\/src\/(app|deps)\.ts$/.test(file) &&
  !/\/store(\.ts$|\/)/.test(file)

describe('what the service says to a person', () => {
  it('is written in the wording room, or in the words folder of the API, and nowhere else', () => {
    expect(found(answersRequests)).toEqual([])
  })
})

/**
 * Not read here: payloads of earlier versions, which keep the words that they had; the conditions of the diagnosis rules
 * and the table of kinds, which are pages of the documents; and the words of each room, which say of a text that
 * was just typed what is wrong with it.
 */
const belowTheEdge = (file: string): boolean =>
  /^packages\/(ledger|reckoning)\/src\//.test(file) &&
  !/\/diagnosis\/rules\/|\/documents\/|-version-\d+\.ts$|\/src\/words(\/|\.ts$)/.test(file)

describe('the ledger and reckoning', () => {
  it('hold codes and figures, and all their sentences are in the words of their room', () => {
    expect(found(belowTheEdge)).toEqual([])
  })
})

describe('what the screens say of what was just typed', () => {
  it('is in one file of words: no check of a field holds a sentence', () => {
    const screens = repositoryFiles().filter(
      (file) => /^apps\/web\/src\/.*\.tsx?$/.test(file) && !/\.(test|test-support)\.tsx?$/.test(file),
    )
    expect(
      screens.flatMap((file) => typedRefusalsIn(file, textOf(file)).map((text) => `${file}: ${text}`)),
    ).toEqual([])
  })

  it.each([
    "const row = { fault: (text: string) => (text === '' ? 'Type the whole ID.' : undefined) }",
    "export const missingInForm = (form: Form) => (form.name === '' ? 'Write a name.' : undefined)",
    "const idFault = (text: string) => { if (text === '') return 'Type the whole ID.'; return undefined }",
  ])('would be found in %s', (source) => {
    expect(typedRefusalsIn('a.ts', source)).toHaveLength(1)
  })
})

describe('the search for sentences', () => {
  it.each([
    "throw new AppError({ code: 'X', detail: 'Search for the customer again.' })",
    'const words = `Wait a minute, then try again.`',
    "const verb = 'asks for'",
    "return { allowed: 'another form' }",
  ])('finds %s', (source) => {
    expect(sentencesIn('a.ts', source)).toHaveLength(1)
  })

  it.each([
    "throw new Error('an order that was never opened has no head')",
    "request.log.error({ err }, 'a reply at an undeclared status was refused')",
    "pool.query('select id from shops where id = $1')",
    "import { one } from './a file.ts'",
    "type Verdict = 'not yet'",
    "const code = 'estimate-changed'",
  ])('leaves %s alone', (source) => {
    expect(sentencesIn('a.ts', source)).toEqual([])
  })
})
