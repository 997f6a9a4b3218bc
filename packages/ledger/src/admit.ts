import { admitToOrder } from './admit/admit-order.ts'
import { admitSecondPerson } from './admit/admit-second-person.ts'
import { admitToStep } from './admit/admit-step.ts'
import type { AdmitFacts } from './admit/facts.ts'
import { holdsFor } from './admit/holds.ts'
import type { Refusal, Verdict } from './admit/refusal.ts'
import type { Rules } from './admit/rule.ts'
import type { Draft } from './entry.ts'
import type { Hold } from './hold.ts'
import type { Kind } from './registry.ts'
import type { OrderState } from './state.ts'
import { arrivalRules } from './subjects/arrival/rules.ts'
import { closingRules } from './subjects/closing/rules.ts'
import { comebackRules } from './subjects/comeback/rules.ts'
import { consentRules } from './subjects/consent/rules.ts'
import { findingRules } from './subjects/findings/rules.ts'
import { messageRules } from './subjects/messages/rules.ts'
import { openingRules } from './subjects/opening/rules.ts'
import { photoRules } from './subjects/photos/rules.ts'
import { torqueRules } from './subjects/torque/rules.ts'
import { troubleRules } from './subjects/trouble/rules.ts'
import { workRules } from './subjects/work/rules.ts'
import { upcast } from './upcast.ts'

type AnyRule = (state: OrderState, draft: Draft, facts: AdmitFacts) => Refusal | null

/** The rules of every kind, possibly none: a kind that is missing here does not compile. */
const rules: Rules<Kind> = {
  ...openingRules,
  ...arrivalRules,
  ...findingRules,
  ...comebackRules,
  ...consentRules,
  ...workRules,
  ...torqueRules,
  ...closingRules,
  ...photoRules,
  ...messageRules,
  ...troubleRules,
}

/**
 * Whether this entry may follow what the order already holds. Pure: everything outside the order comes in `facts`. It
 * runs once, when the server appends, and never when entries are replayed. It returns the first reason against an entry.
 */
export const admit = (state: OrderState, written: Draft, facts: AdmitFacts): Verdict => {
  const draft = upcast(written)
  const general =
    admitToOrder(state, draft, facts) ?? admitSecondPerson(draft, facts) ?? admitToStep(state, draft)
  if (general) return general
  for (const rule of rules[draft.kind] as readonly AnyRule[]) {
    const refusal = rule(state, draft, facts)
    if (refusal) return refusal
  }
  const holds: readonly Hold[] = holdsFor(state, draft, facts)
  return { admitted: true, holds }
}
