import type { Hold } from '../hold.ts'
import type { DeliveryRefusalCode, RefusalCode } from './refusal-codes.ts'
import type { RefusalValues } from './refusal-values.ts'

/** Why an entry is not taken: a code and the values that its words are made from. It holds no sentence. */
export type RefusalOf<Code extends RefusalCode | DeliveryRefusalCode> = {
  readonly admitted: false
  readonly code: Code
  readonly values: RefusalValues[Code]
}
export type Refusal = { [Code in RefusalCode]: RefusalOf<Code> }[RefusalCode]
/** What a server found when it received an entry, before or after the ledger judged it. */
export type DeliveryRefusal = { [Code in DeliveryRefusalCode]: RefusalOf<Code> }[DeliveryRefusalCode]
export type Verdict = { readonly admitted: true; readonly holds: readonly Hold[] } | Refusal

export const refuse = <Code extends RefusalCode | DeliveryRefusalCode>(
  code: Code,
  values: RefusalValues[Code],
): RefusalOf<Code> => ({ admitted: false, code, values })
