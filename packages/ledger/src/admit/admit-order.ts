import type { Draft } from '../entry.ts'
import { markOfEntry } from '../questions/entry-places.ts'
import { definitionOf } from '../registry.ts'
import type { OrderState } from '../state.ts'
import type { AdmitFacts } from './facts.ts'
import { type Refusal, refuse } from './refusal.ts'
import { refuseRole } from './refuse-role.ts'

/** An addendum is a report that supersedes the one before; it may come after the keys are back. */
const afterSealing: ReadonlySet<string> = new Set([
  'order.handed_back',
  'report.sealed',
  'payment.noted',
  'payment.corrected',
])

/** Money comes and is corrected after the keys are back too: an account is paid next month. */
const payments: ReadonlySet<string> = new Set(['payment.noted', 'payment.corrected'])

/** The rules for every kind: the order's beginning and end, who writes, and what the entry rests on. */
export const admitToOrder = (state: OrderState, draft: Draft, facts: AdmitFacts): Refusal | null => {
  if (markOfEntry(state, draft.id)) return refuse('ENTRY_ID_REUSED', {})
  if (draft.kind === 'order.opened' && state.opened) return refuse('ORDER_ALREADY_OPENED', {})
  if (draft.kind !== 'order.opened' && !state.opened) return refuse('ORDER_NOT_OPENED', {})
  const isOver = (state.handedBack && draft.kind !== 'report.sealed') || state.ended
  if (isOver && !payments.has(draft.kind)) return refuse('ORDER_ENDED', {})
  if (state.reports.length > 0 && !afterSealing.has(draft.kind)) return refuse('ORDER_SEALED', {})
  const author = facts.author.kind
  if (!definitionOf(draft.kind).writtenBy.includes(author))
    return draft.kind === 'plan.issued'
      ? refuse('PLAN_NOT_BY_SYSTEM', {})
      : refuse('ENTRY_KIND_NOT_ALLOWED', { why: 'author', kind: draft.kind, author })
  const role = refuseRole(definitionOf(draft.kind).roles, facts)
  if (role) return role
  for (const id of draft.restsOn) {
    if (facts.refusedIds.has(id)) return refuse('ENTRY_RESTS_ON_REFUSED', { entryId: id })
    if (!markOfEntry(state, id)) return refuse('ENTRY_RESTS_ON_UNKNOWN', { entryId: id })
  }
  return null
}
