import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { ruleSetVersion } from '../diagnose.ts'
import { Diagnosis } from '../diagnosis.ts'
import { differences } from './case-differences.test-support.ts'
import { diagnosisOf } from './diagnosed-cases.test-support.ts'
import { mustHold } from './must-hold.test-support.ts'
import { tradeCases, workedCases } from './worked-cases.test-support.ts'

/** What a diagnosis is before anything was found. */
const nothing: Diagnosis = {
  ruleSet: ruleSetVersion,
  primary: null,
  findings: [],
  contradictions: [],
  unchecked: [],
  nextChecks: [],
}

describe('worked cases', () => {
  it('are all there, each under a name of its own', () => {
    expect(tradeCases).toHaveLength(61)
    expect(new Set(workedCases.map(({ name }) => name)).size).toBe(workedCases.length)
  })

  it.each(workedCases)('$name, $title: finds exactly what is expected, and what must hold holds', (one) => {
    expect(differences(one)).toEqual([])
  })

  it.each(workedCases)('$name: the diagnosis has the published form', (one) => {
    const diagnosis = diagnosisOf(one)
    expect(z.parse(Diagnosis, diagnosis)).toEqual(diagnosis)
  })
})

describe('what must hold in a case', () => {
  const remarked = workedCases.filter((one) => one.mustHold !== null)

  it('has a test for each remark and no test without one', () => {
    expect(Object.keys(mustHold).sort()).toEqual(remarked.map(({ name }) => name).sort())
  })

  it.each(remarked)('$name: its test fails of a diagnosis that found nothing', ({ name, evidence }) => {
    expect(mustHold[name]?.(nothing, evidence)).toBe(false)
  })
})

describe('the differences from a case', () => {
  const [first] = tradeCases
  if (first === undefined) throw new Error('there are no cases')

  it('name what is missing, what is too much, another cause and what does not hold', () => {
    const told = { ...diagnosisOf(first), primary: null }
    const findings = told.findings.map((finding) => ({ ...finding, code: 'under-placard' as const }))
    expect(differences(first, { ...told, findings })).toEqual([
      'expected tire-low@LF, which was not found',
      'found under-placard@LF, which was not expected',
      'found nothing as the cause, expected tire-low',
      'does not hold: find the leak before only filling; no sensor line',
    ])
  })
})
