import { describe, expect, it } from 'vitest'
import { sentencesIn } from './program-sentences.ts'
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
