import { Confidence } from '@bayledger/reckoning/diagnosis/diagnosis'
import { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'
import { describe, expect, it } from 'vitest'
import { confidence } from './confidence.ts'
import { findingTitles } from './finding-titles.ts'

describe('the titles of findings', () => {
  it.each(FindingCode.options)('%s: reads as words, begins a line and fits on one', (code) => {
    const title = findingTitles[code]
    expect(title).toMatch(/^[A-Z]/)
    expect(title).not.toMatch(/[.{}_]| {2}/)
    expect(title.split(' ').length).toBeLessThanOrEqual(9)
  })

  it('are different for every finding', () => {
    expect(new Set(Object.values(findingTitles)).size).toBe(FindingCode.options.length)
  })
})

describe('the words for how sure a finding is', () => {
  it.each(Confidence.options)('%s: one word and one sentence or two', (sure) => {
    const { word, means } = confidence[sure]
    expect(word).toMatch(/^[A-Z][a-z]+$/)
    expect(means).toMatch(/^[A-Z].*\.$/)
    expect(means.split(' ').length).toBeLessThanOrEqual(20)
  })
})
