import { caseNamed } from '@bayledger/reckoning/diagnosis/cases/worked-cases.test-support'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { describe, expect, it } from 'vitest'
import { bundleReason } from './bundles.ts'
import { english } from './en/english.ts'

describe('why a bundle is offered', () => {
  // T13: a nail in the crown of a tire that is half the way down.
  const { findings } = diagnose(caseNamed('T13').evidence)
  const [loss, nail] = ['slow-loss-suspected', 'puncture-found'] as const
  const reasonFor = (codes: string[]) => {
    const wheel = findings.find(({ code }) => code === nail)?.wheels[0] ?? 'LF'
    return bundleReason(
      english,
      {
        bundleKey: `leak.${wheel}`,
        title: 'leak-search',
        works: [{ kind: 'find-leak', wheel }],
        findings: codes,
      },
      findings,
    )
  }

  it('is the hole that was seen, and without one the pressure', () => {
    expect(reasonFor([loss, nail])).toMatch(/^There is a puncture in the .* tire\. We look inside first/)
    expect(reasonFor([loss])).toMatch(/ psi/)
  })
})
