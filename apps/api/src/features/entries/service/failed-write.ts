import { type DeliveryRefusal, refuse } from '@bayledger/ledger/admit/refusal'
import { constraintNamed } from '../../../core/constraint-named.ts'

/** Why a write failed, as far as that says whose fault it was. */
export type Failure =
  /** Another process was faster by a hair: reading again finds it. */
  | { readonly kind: 'stale' }
  | { readonly kind: 'refused'; readonly refusal: DeliveryRefusal }
  /** Something in one of the entries. */
  | { readonly kind: 'entry'; readonly error: unknown }
  /** The database failed, so it is not known whether any of the entries was written. */
  | { readonly kind: 'everything'; readonly error: unknown }

export const failureOf = (error: unknown): Failure => {
  const constraint = constraintNamed(error)
  if (constraint !== null && raced.has(constraint)) return { kind: 'stale' }
  const missing = constraint === null ? undefined : missingParts[constraint]
  if (missing !== undefined)
    return {
      kind: 'refused',
      refusal: refuse('ORDER_PARTS_UNKNOWN', { part: missing }),
    }
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  if (/^40/.test(code)) return { kind: 'stale' }
  // PostgreSQL manual, appendix A: 22 data exceptions, 23 broken constraints, 54 limits of the program.
  return { kind: /^(22|23|54)/.test(code) ? 'entry' : 'everything', error }
}

const raced: ReadonlySet<string> = new Set(['entries__id', 'entries__pk', 'order_heads__pk'])

/** Foreign keys say what no pure function can: whether the customer, vehicle or place of a new order exists. */
const missingParts: Readonly<Record<string, 'customer' | 'vehicle' | 'location'>> = {
  order_heads__customer: 'customer',
  order_heads__vehicle: 'vehicle',
  order_heads__location: 'location',
}
