import { expect, it } from 'vitest'
import { parseEvidence } from '../../evidence/evidence.ts'
import { withADozenUnchecked, withEverythingChecked } from './whole-evidence.test-support.ts'
import { tradeCases } from './worked-cases.test-support.ts'

it('every worked case can be with everything checked, and with a dozen facts unchecked', () => {
  for (const { evidence } of tradeCases)
    for (const made of [withEverythingChecked(evidence), withADozenUnchecked(evidence)])
      expect(parseEvidence(JSON.parse(JSON.stringify(made)))).toMatchObject({ ok: true })
})
