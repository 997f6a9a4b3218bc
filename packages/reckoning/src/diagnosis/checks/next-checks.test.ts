import { describe, expect, it } from 'vitest'
import { Evidence } from '../../evidence/evidence-schema.ts'
import { caseNamed, workedCases } from '../cases/worked-cases.test-support.ts'
import { diagnose } from '../diagnose.ts'
import { readFacts } from '../facts/facts.ts'
import { checksFor } from './all-checks.ts'
import { suppose } from './suppose.ts'

const evidenceOf = (name: string) => caseNamed(name).evidence

describe('what to check next', () => {
  it('names the stored IDs where they would distinguish a new sensor from another wheel set', () => {
    const unread = suppose(evidenceOf('K18'), { controlModule: null })
    const ids = diagnose(unread).nextChecks.find(({ field }) => field === 'controlModule.ids')
    expect(ids?.couldChange).toContain('other-wheel-set')
    expect(ids?.couldChange).toContain('malfunction-unexplained')
    expect(ids?.verdicts).toBeGreaterThanOrEqual(2)
    expect(ids?.seconds).toBe(60)
  })

  it('names a missing gauge value, whose values lead to the most verdicts', () => {
    const { nextChecks, unchecked } = diagnose(suppose(evidenceOf('K01'), { 'wheels.LF.gauge': null }))
    expect(unchecked).toContain('wheels.LF.gauge')
    const gauge = nextChecks.find(({ field }) => field === 'wheels.LF.gauge')
    expect(gauge?.couldChange).toEqual(expect.arrayContaining(['run-low-damage-possible', 'tire-low']))
    expect(gauge?.verdicts).toBeGreaterThanOrEqual(3)
  })

  it('leaves out what was noted as not possible', () => {
    const unread = suppose(evidenceOf('K18'), {
      controlModule: null,
      notPossible: [{ field: 'controlModule', why: 'no connection' }],
    })
    const { nextChecks, unchecked } = diagnose(unread)
    expect(unchecked.filter((field) => field.startsWith('controlModule'))).toEqual([])
    expect(nextChecks.filter(({ field }) => field.startsWith('controlModule'))).toEqual([])
  })

  it('only supposes what evidence may say', () => {
    // No field of the evidence is judged by another one, so what was found sound in one case is sound in all.
    const seen = new Set<string>()
    for (const { name, evidence } of workedCases) {
      const facts = readFacts(evidence)
      for (const check of checksFor(facts)) {
        for (const supposition of check.suppositions(facts)) {
          const key = JSON.stringify(supposition)
          if (seen.has(key)) continue
          seen.add(key)
          const parsed = Evidence.safeParse(suppose(evidence, supposition))
          expect(parsed.error?.issues ?? [], `${name} ${check.field}`).toEqual([])
        }
      }
    }
    expect(seen.size).toBeGreaterThan(1_000)
  })
})
