import type { Draft } from '../entry.ts'
import { definitionOf } from '../registry.ts'
import type { OrderState } from '../state.ts'
import type { AdmitFacts } from './facts.ts'
import { type Refusal, refuse } from './refusal.ts'
import { refuseRole } from './refuse-role.ts'

/** An addendum is a report that supersedes the one before; it may come after the keys are back. */
const afterSealing: ReadonlySet<string> = new Set(['order.handed_back', 'report.sealed'])

/** What holds for every kind: the order's own beginning and end, who writes, and what the entry rests on. */
export const admitToOrder = (state: OrderState, draft: Draft, facts: AdmitFacts): Refusal | null => {
  if (state.marks.some((mark) => mark.entryId === draft.id))
    return refuse('ENTRY_ID_REUSED', 'Another entry of this order already has this id; write the entry anew.')
  if (draft.kind === 'order.opened' && state.opened)
    return refuse('ORDER_ALREADY_OPENED', 'This order is already open; write the next entry to it.')
  if (draft.kind !== 'order.opened' && !state.opened)
    return refuse('ORDER_NOT_OPENED', 'This order has not been opened; open it at the desk first.')
  if ((state.handedBack && draft.kind !== 'report.sealed') || state.ended)
    return refuse(
      'ORDER_ENDED',
      'This order has ended. Open a new one and join it to this one as a comeback.',
    )
  if (state.reports.length > 0 && !afterSealing.has(draft.kind))
    return refuse(
      'ORDER_SEALED',
      'The report is sealed; after it there are only the hand-back and addenda. Open a new order for what is left.',
    )
  const author = facts.author.kind
  if (!definitionOf(draft.kind).writtenBy.includes(author))
    return draft.kind === 'plan.issued'
      ? refuse('PLAN_NOT_BY_SYSTEM', 'A job plan is computed from the answers; it cannot be written by hand.')
      : refuse(
          'ENTRY_KIND_NOT_ALLOWED',
          `An entry of the kind ${draft.kind} cannot be written by ${authorWords[author]}.`,
        )
  const role = refuseRole(definitionOf(draft.kind).roles, facts)
  if (role) return role
  for (const id of draft.restsOn) {
    if (facts.refusedIds.has(id))
      return refuse(
        'ENTRY_RESTS_ON_REFUSED',
        'This rests on an entry that was refused; settle that one first.',
      )
    if (!state.marks.some((mark) => mark.entryId === id))
      return refuse(
        'ENTRY_RESTS_ON_UNKNOWN',
        'This rests on an entry that this order does not hold; send that one first.',
      )
  }
  return null
}

const authorWords = { staff: 'the staff', customer: 'a customer', system: 'the system' } as const
