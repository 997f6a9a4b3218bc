import { definitionOf } from '@bayledger/ledger/registry'
import { judgeRoles, type Role } from '@bayledger/ledger/role'
import type { ProvenKind } from '@bayledger/ledger/second-person'

/** Long enough for a tablet behind a raised truck to find its network again, too short to be kept for later. */
export const agreementMinutes = 10

/** Why this person cannot be the second person for this kind of agreement, in words; `null`: they can. */
export const refuseSecondPerson = (kind: ProvenKind, held: readonly Role[]): string | null => {
  const agreedBy = kind === 'sheet-figure' ? judgeRoles : definitionOf(kind).agreedBy
  return held.some((role) => agreedBy.includes(role))
    ? null
    : `The second person must be one of these here: ${agreedBy.join(', ')}. Ask one of them.`
}
