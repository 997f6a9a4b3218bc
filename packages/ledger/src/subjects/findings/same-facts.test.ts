import { caseNamed } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { expect, it } from 'vitest'
import * as z from 'zod/mini'
import { digestOf } from '../../digests.ts'
import { DiagnosisIssuedVersion1, diagnosisToVersion2 } from './diagnosis-version-1.ts'
import { areSameFacts } from './same-facts.ts'

const { evidence } = caseNamed('K24')
/** Without next checks, which may name findings that version 1 did not know. */
const today: Diagnosis = { ...diagnose(evidence), nextChecks: [] }

/** The same diagnosis as version 1 wrote it, whatever its words were. */
const inWords = () => {
  const version1 = z.parse(DiagnosisIssuedVersion1, {
    evidence,
    evidenceDigest: digestOf(evidence),
    diagnosis: {
      ...today,
      findings: today.findings.map(({ because, ...facts }) => ({
        ...facts,
        because: because.map(({ field, value, unit }) => ({ field, value, unit, says: 'so it is' })),
        next: 'Look.',
        customer: 'We found this.',
      })),
      contradictions: today.contradictions.map(({ code }) => ({ code, says: 'They differ.', do: 'Look.' })),
      nextChecks: today.nextChecks.map((check) => ({ ...check, ask: 'Look.' })),
    },
  })
  return diagnosisToVersion2(version1).diagnosis
}

it('a diagnosis that was issued in other words holds the same facts', () => {
  expect(areSameFacts(inWords(), today)).toBe(true)
  expect(areSameFacts(today, inWords())).toBe(true)
})

it('one that differs in a fact does not, in words or not', () => {
  const changed = [
    { primary: null },
    { unchecked: ['strayIds'] },
    { findings: today.findings.slice(1) },
    { contradictions: [] },
    { findings: today.findings.map((finding) => ({ ...finding, confidence: 'firm' as const })) },
  ]
  for (const change of changed) {
    expect(areSameFacts({ ...today, ...change }, today), JSON.stringify(change)).toBe(false)
    expect(areSameFacts({ ...today, ...change }, inWords()), JSON.stringify(change)).toBe(false)
  }
})

it('one whose reason has another code does not', () => {
  const [first, ...rest] = today.findings
  if (!first) throw new RangeError('an unexplained flash is found')
  const because = first.because.map((reason) => ({ ...reason, code: 'fitted' as const }))
  expect(areSameFacts({ ...today, findings: [{ ...first, because }, ...rest] }, today)).toBe(false)
})
