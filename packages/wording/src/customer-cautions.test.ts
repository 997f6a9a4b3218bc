import { customerCaution, customerCautionVersions } from '@bayledger/reckoning/cautions/customer-cautions'
import { describe, expect, it } from 'vitest'
import { cautionName, cautionWords } from './customer-cautions.ts'
import { customerCautions } from './en/customer-cautions.ts'
import { customerCautions as inSpanish } from './es/customer-cautions.ts'

const everyVersion = Object.entries(customerCautionVersions).flatMap(([number, versions]) =>
  versions.map((version) => ({ number, version })),
)

describe('a customer caution', () => {
  it.each(everyVersion)('$number version $version has sentences of 25 words or fewer', (caution) => {
    const sentences = (cautionWords(customerCautions, caution) ?? '').split(/(?<=[.?!])\s+/)
    for (const sentence of sentences) {
      const count = sentence.split(/\s+/).length
      expect(count).toBeGreaterThan(2)
      expect(count).toBeLessThanOrEqual(25)
    }
  })

  it('has a version of its own only where the words of a language changed', () => {
    const all = everyVersion.map(
      (caution) => `${cautionWords(customerCautions, caution)} ${cautionWords(inSpanish, caution)}`,
    )
    expect(new Set(all).size).toBe(everyVersion.length)
  })

  it.each([
    ['English', customerCautions],
    ['Spanish', inSpanish],
  ])('never says what another one says, in %s', (_, words) => {
    const numbered = everyVersion.map((caution) => `${caution.number} ${cautionWords(words, caution)}`)
    const said = everyVersion.map((caution) => cautionWords(words, caution))
    expect(new Set(numbered).size).toBe(new Set(said).size)
  })

  it('is named with its version', () => {
    expect(cautionName(customerCaution('CT-01'))).toBe('CT-01 v2')
  })

  it('that was never issued has no words', () => {
    expect(cautionWords(customerCautions, { number: 'CT-01', version: 99 })).toBeNull()
    expect(cautionWords(customerCautions, { number: 'CT-99', version: 1 })).toBeNull()
    expect(cautionWords(customerCautions, { number: 'toString', version: 1 })).toBeNull()
  })
})
