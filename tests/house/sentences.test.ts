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

/** Files below the edge that may hold words, and why (decision 0025). The list may shrink and must not grow. */
const mayHoldWords: Readonly<Record<string, readonly string[]>> = {
  'a refusal of what was just typed, which nothing stores': [
    'ledger/src/draft.ts',
    'ledger/src/text.ts',
    'reckoning/src/evidence/evidence-faults.ts',
    'reckoning/src/evidence/evidence-ranges.ts',
    'reckoning/src/evidence/evidence.ts',
    'reckoning/src/evidence/read-evidence.ts',
    'reckoning/src/sensor/read-sensor-id.ts',
    'reckoning/src/sensor/sensor-id.ts',
    'reckoning/src/sensor/trouble-code.ts',
    'reckoning/src/sheet.ts',
    'reckoning/src/tire/read-date-code.ts',
    'reckoning/src/tire/read-size-tail.ts',
    'reckoning/src/tire/read-tin.ts',
    'reckoning/src/tire/read-tire-size.ts',
    'reckoning/src/tire/tire-age.ts',
    'reckoning/src/torque/offset-adapter.ts',
    'reckoning/src/torque/read-sequence.ts',
    'reckoning/src/torque/read-thread.ts',
    'reckoning/src/torque/star-sequence.ts',
    'reckoning/src/units/calendar-day.ts',
    'reckoning/src/vehicle/vin.ts',
  ],
  'a computation that no screen shows yet': [
    'reckoning/src/tire/judge-tread.ts',
    'reckoning/src/tire/load-words.ts',
    'reckoning/src/tire/tread-rules.ts',
    'reckoning/src/torque/clamp-force.ts',
  ],
  'the source of a figure, or a page of the documents': [
    'ledger/src/documents/kinds-table.ts',
    'reckoning/src/pressure/warning-floors.ts',
    'reckoning/src/vehicle/model-year.ts',
  ],
  'what the verifying command prints': ['ledger/src/hash-chain.ts'],
}

const listed = Object.values(mayHoldWords)
  .flat()
  .map((file) => `packages/${file}`)

/** Payloads of earlier versions keep the words that they had. */
const belowTheEdge = (file: string): boolean =>
  /^packages\/(ledger|reckoning)\/src\//.test(file) && !/\/diagnosis\/rules\/|-version-\d+\.ts$/.test(file)

describe('the ledger and reckoning', () => {
  it('hold codes and figures: no file but those listed has a sentence', () => {
    expect(found((file) => belowTheEdge(file) && !listed.includes(file))).toEqual([])
  })

  it.each(listed)('%s is on the list because it has one', (file) => {
    expect(sentencesIn(file, textOf(file))).not.toEqual([])
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
