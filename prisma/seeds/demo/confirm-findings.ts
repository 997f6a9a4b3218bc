import { digestOf } from '@bayledger/ledger/digests'
import type { EntryOfKind } from '@bayledger/ledger/entry'
import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { OrderPen } from './order-pen.ts'
import type { DemoPerson } from './people.ts'

/** Computes the findings from what the arrival check recorded, and lets the technician confirm them. */
export const confirmFindings = (
  pen: OrderPen,
  {
    by,
    deviceId,
    issuedAt,
    confirmedAt,
  }: {
    by: DemoPerson
    deviceId: string
    issuedAt: string
    confirmedAt: string
  },
): EntryOfKind<'diagnosis.issued'> => {
  const evidence = evidenceOf(pen.state(), pen.history())
  const issued = pen.write(
    'diagnosis.issued',
    { evidence, diagnosis: diagnose(evidence), evidenceDigest: digestOf(evidence) },
    { at: issuedAt, by, deviceId },
  )
  pen.write(
    'diagnosis.confirmed',
    { diagnosisId: issued.id, verdict: { agrees: true } },
    { at: confirmedAt, by, deviceId, restsOn: [issued.id] },
  )
  return issued as EntryOfKind<'diagnosis.issued'>
}
