import * as fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import type { Evidence } from '../../evidence/evidence-schema.ts'
import { workedCases } from '../cases/worked-cases.test-support.ts'
import { checksFor } from '../checks/all-checks.ts'
import type { Supposition } from '../checks/field-check.ts'
import { suppose } from '../checks/suppose.ts'
import { type Judgment, judge, rejudge } from './judge.ts'

vi.setConfig({ testTimeout: 60_000 })

const outcome = ({ primary, judged }: Judgment) => ({
  primary,
  found: judged.map(({ rule, match }) => `${rule.code}@${match.wheels.join('+')} ${match.confidence ?? ''}`),
})

/** Some of the ways in which the evidence of a worked case could have been different. */
const suppositions = ({ facts }: Judgment): fc.Arbitrary<Supposition[]> =>
  fc.subarray(
    checksFor(facts).flatMap((check) => check.suppositions(facts)),
    { maxLength: 3 },
  )

describe('judging again after some facts changed', () => {
  for (const { name, evidence } of workedCases) {
    it(`${name}: finds what judging from the start finds`, () => {
      const judgment = judge(evidence)
      fc.assert(
        fc.property(suppositions(judgment), (supposed) => {
          const changed = supposed.reduce<Evidence>((before, one) => suppose(before, one), evidence)
          const fields = supposed.flatMap((one) => Object.keys(one))
          expect(outcome(rejudge(judgment, changed, fields))).toEqual(outcome(judge(changed)))
        }),
        { numRuns: 40, seed: 20260112 },
      )
    })
  }
})
