import {
  diagnosedSoFar,
  diagnosisOf,
} from '@bayledger/reckoning/diagnosis/cases/diagnosed-cases.test-support'
import { anyEvidence } from '@bayledger/reckoning/diagnosis/cases/generated-evidence.test-support'
import { caseNamed, workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { allChecks } from '@bayledger/reckoning/diagnosis/checks/all-checks'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkWords } from './checks.ts'
import { english } from './en/english.ts'
import { wordedDiagnosis } from './worded-diagnosis.ts'
import { mustSay } from './worked-case-words.test-support.ts'

const wordedCase = (name: string) => wordedDiagnosis(english, diagnosisOf(caseNamed(name)))

describe('a diagnosis in words', () => {
  it('has the members that other programs read, in their order', () => {
    const worded = wordedCase('K57')
    expect(Object.keys(worded)).toEqual([
      ...['ruleSet', 'primary', 'findings', 'contradictions', 'unchecked', 'nextChecks'],
    ])
    expect(Object.keys(worded.findings[0] ?? {})).toEqual([
      ...['code', 'wheels', 'confidence', 'kind', 'stop', 'because', 'next', 'customer'],
      ...['figures', 'offers', 'holds'],
    ])
    expect(Object.keys(worded.findings[0]?.because[0] ?? {})).toEqual(['field', 'value', 'unit', 'says'])
    expect(Object.keys(wordedCase('K24').contradictions[0] ?? {})).toEqual(['code', 'says', 'do'])
    expect(Object.keys(worded.nextChecks[0] ?? {})).toEqual([
      ...['field', 'ask', 'couldChange', 'verdicts', 'seconds'],
    ])
  })

  it('says of one low tire what is low, what to do and why', () => {
    expect(wordedCase('K01').findings[0]).toMatchObject({
      because: [
        {
          field: 'wheels.LF.gauge',
          value: 22,
          unit: 'psi',
          says: 'at or under the 26.25 psi at which the light comes on',
        },
      ],
      next: 'Find the leak before only filling.',
      customer:
        'Your left front tire has 22.0 psi; by the door label it should have 35. The light is doing its job.',
    })
  })

  it.each(Object.keys(mustSay))('says in %s what the case requires', (name) => {
    expect(mustSay[name]?.(wordedCase(name))).toBe(true)
  })

  it.each(Object.keys(mustSay))('of nothing found does not pass for %s', (name) => {
    const nothing = { ...wordedCase(name), findings: [], contradictions: [], nextChecks: [] }
    expect(mustSay[name]?.(nothing)).toBe(false)
  })

  it('leaves no place empty, whatever the evidence, and needs 25 words at most for the customer', () => {
    const empty = /[{}]|undefined|NaN|null|\[object| {2}/
    fc.assert(
      fc.property(anyEvidence, (evidence) => {
        const { findings, contradictions } = wordedDiagnosis(english, diagnosedSoFar(evidence))
        for (const { customer, next, because } of findings) {
          expect(customer.split(/\s+/).length, customer).toBeLessThanOrEqual(25)
          for (const words of [customer, next, ...because.map(({ says }) => says)]) {
            expect(words).not.toMatch(empty)
            expect(words).not.toBe('')
          }
        }
        for (const { says, do: action } of contradictions) expect(`${says} ${action}`).not.toMatch(empty)
      }),
      { numRuns: 300, seed: 20260112 },
    )
    for (const one of workedCases)
      for (const { ask } of wordedDiagnosis(english, diagnosisOf(one)).nextChecks)
        expect(ask).toMatch(/^[A-Z].*\.$/)
  })

  it('has a request for every field that a diagnosis may list as not checked', () => {
    for (const { field } of allChecks) expect(checkWords(english, field), field).toMatch(/^[A-Z].*\.$/)
    expect(checkWords(english, 'wheels.RR.color')).toBe('')
  })
})

describe('a diagnosis that was issued in words', () => {
  it('is read in those words', () => {
    const diagnosis = diagnosisOf(caseNamed('K24'))
    const asWritten = {
      ...diagnosis,
      findings: diagnosis.findings.map((finding) => ({
        ...finding,
        because: finding.because.map((reason) => ({
          ...reason,
          code: 'as-written' as const,
          values: { words: 'so it was written' },
        })),
        asWritten: { next: 'Look again.', customer: 'We found this.' },
      })),
      contradictions: diagnosis.contradictions.map((one) => ({
        ...one,
        asWritten: { says: 'Two things differ.', do: 'Look twice.' },
      })),
      nextChecks: [
        { field: 'strayIds', couldChange: [], verdicts: 2, seconds: 5, asWritten: { ask: 'Listen.' } },
      ],
    }
    expect(wordedDiagnosis(english, asWritten)).toMatchObject({
      findings: [
        { because: [{ says: 'so it was written' }], next: 'Look again.', customer: 'We found this.' },
      ],
      contradictions: [{ says: 'Two things differ.', do: 'Look twice.' }],
      nextChecks: [{ ask: 'Listen.' }],
    })
  })
})
