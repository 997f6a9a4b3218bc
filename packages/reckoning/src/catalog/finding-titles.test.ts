import { describe, expect, it } from 'vitest'
import { Confidence } from '../diagnosis/diagnosis.ts'
import { FindingCode } from '../diagnosis/finding-codes.ts'
import { confidenceWords } from './confidence-words.ts'
import { findingTitle } from './finding-titles.ts'

describe('the titles of findings', () => {
  it.each(FindingCode.options)('%s: reads as words, begins a line and fits on one', (code) => {
    const title = findingTitle(code)
    expect(title).toMatch(/^[A-Z]/)
    expect(title).not.toMatch(/[.{}_]| {2}/)
    expect(title.split(' ').length).toBeLessThanOrEqual(9)
  })

  it('tell every finding from every other', () => {
    expect(new Set(FindingCode.options.map(findingTitle)).size).toBe(FindingCode.options.length)
  })
})

describe('the words for how sure a finding is', () => {
  it.each(Confidence.options)('%s: one word and one sentence or two', (confidence) => {
    const { word, means } = confidenceWords[confidence]
    expect(word).toMatch(/^[A-Z][a-z]+$/)
    expect(means).toMatch(/^[A-Z].*\.$/)
    expect(means.split(' ').length).toBeLessThanOrEqual(20)
  })
})
