import type { Draft, Hold } from '../entry.ts'
import type { Kind } from '../kinds/registry.ts'
import type { OrderState } from '../order-state.ts'
import { arrivalRules } from './admit-arrival.ts'
import { closingRules } from './admit-closing.ts'
import { consentRules } from './admit-consent.ts'
import { findingRules } from './admit-finding.ts'
import { admitToOrder } from './admit-order.ts'
import { admitToStep } from './admit-step.ts'
import { workRules } from './admit-work.ts'
import type { AdmitFacts } from './facts.ts'
import { holdsFor } from './holds.ts'
import type { Refusal, Verdict } from './verdict.ts'

type AnyRule = (state: OrderState, draft: Draft, facts: AdmitFacts) => Refusal | null

const rules: Partial<Record<Kind, readonly AnyRule[]>> = {
  ...arrivalRules,
  ...findingRules,
  ...consentRules,
  ...workRules,
  ...closingRules,
} as Partial<Record<Kind, readonly AnyRule[]>>

/**
 * May this entry follow what the order already holds? Pure: everything outside the order comes in `facts`. It runs
 * once, when the server appends, and never when entries are replayed. The first reason against an entry is told.
 */
export const admit = (state: OrderState, draft: Draft, facts: AdmitFacts): Verdict => {
  const general = admitToOrder(state, draft, facts) ?? admitToStep(state, draft)
  if (general) return general
  for (const rule of rules[draft.kind] ?? []) {
    const refusal = rule(state, draft, facts)
    if (refusal) return refusal
  }
  const holds: readonly Hold[] = holdsFor(draft, facts)
  return { admitted: true, holds }
}
