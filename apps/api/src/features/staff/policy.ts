import { definitionOf } from '@bayledger/ledger/registry'
import { judgeRoles, type Role } from '@bayledger/ledger/role'
import type { ProvenKind } from '@bayledger/ledger/second-person'

/** Long enough for a tablet behind a raised truck to find its network again, too short to be kept for later. */
export const agreementMinutes = 10

/** The roles that may agree to this, where a person holds none of them; `null`: they may agree. */
export const rolesLacking = (kind: ProvenKind, held: readonly Role[]): readonly Role[] | null => {
  const agreedBy = kind === 'sheet-figure' ? judgeRoles : definitionOf(kind).agreedBy
  return held.some((role) => agreedBy.includes(role)) ? null : agreedBy
}
