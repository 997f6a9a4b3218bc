import { describe, expect, it } from 'vitest'
import { parseEvidence } from '../../evidence/evidence.ts'
import { diagnose } from '../diagnose.ts'
import { withADozenUnchecked, withEverythingChecked } from './whole-evidence.test-support.ts'
import { tradeCases } from './worked-cases.test-support.ts'

describe('evidence with everything checked', () => {
  it.each(tradeCases)(
    '$name: can be so, leaves nothing unchecked and nothing to check next',
    ({ evidence }) => {
      const whole = withEverythingChecked(evidence)
      expect(parseEvidence(whole)).toEqual({ ok: true, evidence: whole })
      expect(diagnose(whole)).toMatchObject({ unchecked: [], nextChecks: [] })
    },
  )

  it('and with a dozen facts unchecked names about a dozen, of which most could change a verdict', () => {
    for (const { name, evidence } of tradeCases) {
      const dozen = withADozenUnchecked(evidence)
      expect(parseEvidence(JSON.parse(JSON.stringify(dozen))), name).toMatchObject({ ok: true })
      const { unchecked, nextChecks } = diagnose(dozen)
      expect(unchecked.length, name).toBeGreaterThanOrEqual(9)
      expect(unchecked.length, name).toBeLessThanOrEqual(13)
      expect(nextChecks.length, name).toBeGreaterThanOrEqual(4)
    }
  })
})
