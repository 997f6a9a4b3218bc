import type { DraftOfKind } from '../entry.ts'
import type { Kind } from '../registry.ts'
import type { OrderState } from '../state.ts'
import type { AdmitFacts } from './facts.ts'
import type { Refusal } from './refusal.ts'

/** One reason to refuse one kind of entry; returns `null` when it does not apply. */
export type Rule<K extends Kind> = (
  state: OrderState,
  draft: DraftOfKind<K>,
  facts: AdmitFacts,
) => Refusal | null

export type Rules<K extends Kind> = { readonly [Name in K]: readonly Rule<Name>[] }
