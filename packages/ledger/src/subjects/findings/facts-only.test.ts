import { diagnosisOf } from '@bayledger/reckoning/diagnosis/cases/diagnosed-cases.test-support'
import { type WorkedCase, workedCases } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { describe, expect, it } from 'vitest'
import * as z from 'zod/mini'
import { digestOf } from '../../digests.ts'
import { findingKinds } from './kinds.ts'

/** Where a payload holds what a person typed: a code as the vehicle shows it, and why a fact could not be checked. */
const typedByPeople = [
  /^evidence\.controlModule\.codes\.\d+\.text$/,
  /^evidence\.notPossible\.\d+\.(field|why)$/,
  /^diagnosis\.findings\.\d+\.because\.\d+\.values\.text$/,
]

/** One code, field, ID, number or unit, or several of them in a list; never words with spaces between them. */
const fact = /^[\w.°-]+(, [\w.°-]+)*$/

const textsIn = (node: unknown, path = ''): { path: string; text: string }[] => {
  if (typeof node === 'string') return [{ path, text: node }]
  if (typeof node !== 'object' || node === null) return []
  return Object.entries(node).flatMap(([name, value]) =>
    textsIn(value, path === '' ? name : `${path}.${name}`),
  )
}

const wordsIn = (payload: unknown): string[] =>
  textsIn(payload)
    .filter(({ path, text }) => !fact.test(text) && !typedByPeople.some((typed) => typed.test(path)))
    .map(({ path, text }) => `${path}: ${text}`)

const payloadOf = (one: WorkedCase) => ({
  evidence: one.evidence,
  diagnosis: diagnosisOf(one),
  evidenceDigest: digestOf(one.evidence),
})

describe('an issued diagnosis', () => {
  it.each(workedCases)('of $name holds facts only, no words that the program made', (one) => {
    const payload = payloadOf(one)
    expect(z.parse(findingKinds['diagnosis.issued'].payload, payload)).toEqual(payload)
    expect(wordsIn(payload)).toEqual([])
  })

  it('would be caught if it held any', () => {
    const [first] = workedCases
    if (first === undefined) throw new RangeError('there are worked cases')
    const payload = payloadOf(first)
    const [finding] = payload.diagnosis.findings
    const withWords = { ...finding, asWritten: { next: 'Find the leak.', customer: 'Your tire is low.' } }
    expect(wordsIn({ ...payload, diagnosis: { ...payload.diagnosis, findings: [withWords] } })).toEqual([
      'diagnosis.findings.0.asWritten.next: Find the leak.',
      'diagnosis.findings.0.asWritten.customer: Your tire is low.',
    ])
  })
})
