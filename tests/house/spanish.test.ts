import { customerCautionVersions } from '@bayledger/reckoning/cautions/customer-cautions'
import { cautionWords } from '@bayledger/wording/customer-cautions'
import { customerLanguages } from '@bayledger/wording/customer-languages'
import { describe, expect, it } from 'vitest'
import { textOf } from './repository-files.ts'

const document = textOf('docs/spanish.md')
const rowOf = (number: string): string[] =>
  document
    .split('\n')
    .find((line) => line.startsWith(`| ${number} | `))
    ?.split(' | ') ?? []

describe('docs/spanish.md', () => {
  it.each(Object.entries(customerCautionVersions))(
    'has %s in both languages and translated back',
    (number, versions) => {
      const newest = { number, version: versions.at(-1) ?? 1 }
      const [, english, spanish, back] = rowOf(number)
      expect(english).toBe(cautionWords(customerLanguages.en.customerCautions, newest))
      expect(spanish).toBe(cautionWords(customerLanguages.es.customerCautions, newest))
      expect(back?.length).toBeGreaterThan(40)
      expect(back).not.toBe(`${english} |`)
    },
  )

  it.each(Object.entries(customerLanguages.es.verdicts.drive))('has the answer %s', (answer, words) => {
    expect(document).toContain(
      `| ${customerLanguages.en.verdicts.drive[answer as 'do-not-drive']} | ${words} |`,
    )
  })
})
