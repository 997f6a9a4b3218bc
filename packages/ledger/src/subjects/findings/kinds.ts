import { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { Evidence } from '@bayledger/reckoning/evidence/evidence'
import * as z from 'zod/mini'
import { kind } from '../../kind.ts'
import { bayRoles, roles } from '../../role.ts'
import { PersonalDigest } from '../../side-kinds.ts'
import { Digest, Id, plainText } from '../../text.ts'

export const findingKinds = {
  /** The whole evidence, findings and rule set; the server recomputes it before it is admitted. */
  'diagnosis.issued': kind(
    z.strictObject({ evidence: Evidence, diagnosis: Diagnosis, evidenceDigest: Digest }),
    { roles: bayRoles, writtenBy: ['staff', 'system'] },
  ),
  'diagnosis.confirmed': kind(
    z.strictObject({
      diagnosisId: Id,
      verdict: z.discriminatedUnion('agrees', [
        z.strictObject({ agrees: z.literal(true) }),
        z.strictObject({ agrees: z.literal(false), ownFinding: plainText(200), reason: PersonalDigest }),
      ]),
    }),
    { roles: bayRoles, sides: ['personal'] },
  ),
  'stop.told': kind(
    z.strictObject({
      diagnosisId: Id,
      codes: z.array(plainText(60)).check(z.minLength(1)),
      channel: z.enum(['in-person', 'telephone']),
      answer: PersonalDigest,
    }),
    { roles, strikable: 'no', sides: ['personal'] },
  ),
}
