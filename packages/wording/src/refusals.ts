import type { DeliveryRefusalCode, RefusalCode } from '@bayledger/ledger/admit/refusal-codes'
import type { RefusalValues } from '@bayledger/ledger/admit/refusal-values'

type AnyCode = RefusalCode | DeliveryRefusalCode

/** What is wrong and what to do, for each refusal a function of its values. */
export type RefusalsWording = {
  readonly [Code in AnyCode]: (values: RefusalValues[Code]) => string
}

export const refusalWords = <Code extends AnyCode>(
  words: RefusalsWording,
  { code, values }: { readonly code: Code; readonly values: RefusalValues[Code] },
): string => words[code](values)
