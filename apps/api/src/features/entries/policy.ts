import { type Refusal, refuse } from '@bayledger/ledger/admit/refusal'
import type { Draft } from '@bayledger/ledger/entry'
import { definitionOf } from '@bayledger/ledger/registry'
import type { StaffActor } from '../../core/actor.ts'

/** Kinds that only the server writes, with what belongs to them: a sealed report comes with its bytes. */
const byOtherRoutes: ReadonlySet<string> = new Set(['report.sealed', 'plan.issued'])

/** Whether this person may deliver this kind from where they are; `null`: yes. */
export const refuseDelivery = (actor: StaffActor, draft: Draft): Refusal | null => {
  if (byOtherRoutes.has(draft.kind))
    return refuse(
      'ENTRY_KIND_NOT_ALLOWED',
      draft.kind === 'report.sealed'
        ? 'A report is sealed from the order page; the server composes it and writes this entry itself.'
        : 'A job plan is computed from the answers; it cannot be written by hand.',
    )
  if (draft.kind === 'estimate.decided' && draft.payload.consent.channel === 'link')
    return refuse(
      'ENTRY_KIND_NOT_ALLOWED',
      'Only the customer answers by the link. Record what they say here, or by telephone.',
    )
  if (definitionOf(draft.kind).writtenWhere === 'server' && actor.kind !== 'desk')
    return refuse(
      'ENTRY_KIND_NOT_ALLOWED',
      'Orders, money and consent are written at the desk. Ask an advisor there.',
    )
  return null
}
