import type { Role } from '../role.ts'
import type { AdmitFacts } from './facts.ts'
import { type Refusal, refuse } from './refusal.ts'

/** Whether the writer is an active person of the shop with one of these roles; customers and the server hold none. */
export const holdsOneOf = (allowed: readonly Role[], { author, staff }: AdmitFacts): boolean =>
  author.kind === 'staff' && (staff.get(author.staffId) ?? []).some((role) => allowed.includes(role))

/** Refuses a person of the shop who may not write this kind. */
export const refuseRole = (allowed: readonly Role[], facts: AdmitFacts): Refusal | null =>
  facts.author.kind !== 'staff' || holdsOneOf(allowed, facts)
    ? null
    : refuse('ROLE_NOT_ALLOWED', { roles: allowed })
