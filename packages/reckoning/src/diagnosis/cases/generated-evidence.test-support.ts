import * as fc from 'fast-check'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { checksFor } from '../checks/all-checks.ts'
import { suppose } from '../checks/suppose.ts'
import { readFacts } from '../facts/facts.ts'
import { workedCases } from './worked-cases.test-support.ts'

/** A thousand runs from one seed: every run of the tests sees the same evidence. */
export const thousandRuns = { numRuns: 1_000, seed: 20260112 } as const

/** The worked cases, each changed in up to four facts to values that those facts could have. */
export const anyEvidence: fc.Arbitrary<Evidence> = fc
  .tuple(fc.constantFrom(...workedCases), fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 4 }))
  .map(([{ evidence }, picks]) =>
    picks.reduce<Evidence>((changed, [which, value]) => {
      const facts = readFacts(changed)
      const checks = checksFor(facts)
      const all = checks[which % checks.length]?.suppositions(facts) ?? []
      const supposed = all[value % Math.max(all.length, 1)]
      return supposed === undefined ? changed : suppose(changed, supposed)
    }, evidence),
  )
