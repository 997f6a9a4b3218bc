import { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { Evidence } from '@bayledger/reckoning/evidence/evidence'
import * as z from 'zod/mini'
import { earlierVersion, kind } from '../../kind.ts'
import { bayRoles, roles } from '../../role.ts'
import { PersonalDigest } from '../../side-kinds.ts'
import { Digest, Id, plainText } from '../../text.ts'
import { DiagnosisIssuedVersion1, diagnosisToVersion2 } from './diagnosis-version-1.ts'
import { DiagnosisIssuedVersion2, diagnosisToVersion3 } from './diagnosis-version-2.ts'

export const findingKinds = {
  /** All evidence and findings and the rule set, as facts; the server recomputes the findings before it admits them. */
  'diagnosis.issued': kind(
    z.strictObject({ evidence: Evidence, diagnosis: Diagnosis, evidenceDigest: Digest }),
    {
      earlier: [
        earlierVersion(DiagnosisIssuedVersion1, diagnosisToVersion2),
        earlierVersion(DiagnosisIssuedVersion2, diagnosisToVersion3),
      ],
      roles: bayRoles,
      writtenBy: ['staff', 'system'],
    },
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
