import { type Refusal, refuse } from '@bayledger/ledger/admit/refusal'
import type { Draft } from '@bayledger/ledger/entry'
import { definitionOf } from '@bayledger/ledger/registry'
import type { Writer } from '../../core/writer.ts'

/** Whether this person may deliver this kind from where they are; `null`: yes. */
export const refuseDelivery = (writer: Writer, draft: Draft): Refusal | null => {
  const { kind } = draft
  if (kind === 'plan.issued') return refuse('PLAN_NOT_BY_SYSTEM', {})
  if (kind === 'report.sealed') return refuse('ENTRY_KIND_NOT_ALLOWED', { why: 'sealed-by-the-server', kind })
  if (kind === 'estimate.decided' && draft.payload.consent.channel === 'link')
    return refuse('ENTRY_KIND_NOT_ALLOWED', { why: 'link-is-the-customers', kind })
  if (definitionOf(kind).writtenWhere === 'server' && writer.from !== 'desk')
    return refuse('ENTRY_KIND_NOT_ALLOWED', { why: 'written-at-the-desk', kind })
  return null
}
