import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { parseEvidence } from '@bayledger/reckoning/evidence/evidence'
import { AppError } from '../../core/app-error.ts'

/** Findings for evidence as it came; every fault of it is named at once. */
export const computeDiagnosis = (input: unknown): Diagnosis => {
  const read = parseEvidence(input)
  if (read.ok) return diagnose(read.evidence)
  const fields = [...read.faults]
  throw new AppError(
    'EVIDENCE_INVALID',
    `${fields.length === 1 ? 'One field is' : `${fields.length} fields are`} not right. Correct what is named and send it again.`,
    { fields },
  )
}
