import { describe, expect, it } from 'vitest'
import { cautionShown, cautionWordsByShown, customerCaution } from './customer-cautions.ts'

describe('a customer caution', () => {
  it('is found by its number, and what an answer keeps of it names its version', () => {
    const caution = customerCaution('CT-01')
    expect(caution).toMatchObject({ number: 'CT-01', version: 1 })
    expect(caution && cautionShown(caution)).toBe('CT-01 v1')
    expect(cautionWordsByShown()['CT-01 v1']).toBe(caution?.words)
  })

  it('is there for every case that the shop warns of', () => {
    for (let number = 1; number <= 17; number += 1) {
      const name = `CT-${String(number).padStart(2, '0')}`
      expect(customerCaution(name), name).toMatchObject({ number: name })
    }
    const shown = Object.keys(cautionWordsByShown())
    expect(shown).toHaveLength(17)
    expect(new Set(Object.values(cautionWordsByShown())).size).toBe(17)
  })

  it('that does not exist is null', () => {
    expect(customerCaution('CT-99')).toBeNull()
    expect(customerCaution('toString')).toBeNull()
  })

  it.each(Object.entries(cautionWordsByShown()))('%s has sentences of 25 words or fewer', (_, words) => {
    const sentences = words.split(/(?<=[.?!])\s+/)
    expect(sentences.length).toBeGreaterThan(0)
    for (const sentence of sentences) expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(25)
  })
})
