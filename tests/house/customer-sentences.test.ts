import { describe, expect, it } from 'vitest'
import { filesReachedFrom } from './files-reached.ts'
import { codesAsWordsIn, labelsIn, sentencesIn } from './program-sentences.ts'
import { repositoryFiles, textOf } from './repository-files.ts'

const sourcesIn = (folder: string): string[] =>
  repositoryFiles().filter(
    (file) => file.startsWith(folder) && /\.tsx?$/.test(file) && !/\.(test|test-support)\.tsx?$/.test(file),
  )

const found = (files: readonly string[], search: (file: string, source: string) => string[]): string[] =>
  files.flatMap((file) => search(file, textOf(file)).map((text) => `${file}: ${text}`))

describe('a report', () => {
  const report = sourcesIn('packages/report/src/')

  it('has all its sentences from the wording room', () => {
    expect(report.length).toBeGreaterThan(50)
    // What sealing throws is read by whoever gives the shop's key, and never by a customer.
    const customers = report.filter((file) => file !== 'packages/report/src/seal.ts')
    expect(found(customers, sentencesIn)).toEqual([])
  })

  it('has its headings, its labels and the words for codes from there too', () => {
    const composed = report.filter((file) => /\/compose/.test(file))
    expect(found(composed, labelsIn)).toEqual([])
    expect(found(composed, (_file, source) => codesAsWordsIn(source))).toEqual([])
  })
})

describe("the customer's page", () => {
  const page = filesReachedFrom('apps/web/src/faces/customer/main.tsx')

  it('has every sentence and every label from the wording room, in the parts too that it shares with the other faces', () => {
    const face = sourcesIn('apps/web/src/faces/customer/')
    expect(page).toEqual(expect.arrayContaining(face))
    expect(page).toContain('apps/web/src/ui/signature-pad.tsx')
    expect(found(page, sentencesIn)).toEqual([])
    expect(found(page, labelsIn)).toEqual([])
  })

  it('has no words in its HTML', () => {
    const html = textOf('apps/web/customer.html').replaceAll(/<[^>]*>/g, ' ')
    expect(html.replaceAll(/\{\w+\}/g, '').trim()).toBe('')
  })
})

describe('a language', () => {
  it('is named nowhere where a customer is served: each is reached by the code on their card', () => {
    const serving = [
      ...sourcesIn('packages/report/src/'),
      ...sourcesIn('apps/api/src/features/customer-face/'),
      ...sourcesIn('apps/api/src/features/reports/service/'),
    ]
    expect(serving.filter((file) => /wording\/(en|es)\//.test(textOf(file)))).toEqual([])
  })
})

describe('the search', () => {
  it.each([
    "const blocks = [paragraph('No wheel came off.')]",
    'const page = <p>Call the shop</p>',
    'const page = <Part title="Your own answer" />',
    "const page = <p>{isOpen ? 'Still being asked' : says.closed}</p>",
  ])('finds the sentence in %s', (source) => {
    expect(sentencesIn('a.tsx', source)).toHaveLength(1)
  })

  it.each([
    "const cells = [words('tight')]",
    'const gaps = [gap(`none`)]',
    "const columns = [{ title: 'Wheel', share: 9 }]",
    "const section = { title: 'pressures' }",
    'const page = <button>clear</button>',
    'const page = <Part title="Sign" />',
  ])('finds the label in %s', (source) => {
    expect(labelsIn('a.tsx', source)).toHaveLength(1)
  })

  it.each([
    'const page = <p className="quiet note">{says.open}</p>',
    "const cells = [words(says.tight), { kind: 'figure', value, unit: 'psi' }]",
    "const isEnter = event.key === 'Enter'",
    'const drawing = `<path d="M 0 0" />`',
  ])('leaves %s alone', (source) => {
    expect([...sentencesIn('a.tsx', source), ...labelsIn('a.tsx', source)]).toEqual([])
  })

  it('finds a code whose hyphens are taken away', () => {
    expect(codesAsWordsIn("words(kind.replaceAll('-', ' '))")).toHaveLength(1)
  })
})
