import type { Reason } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { ReasonCode, ReasonValues } from '@bayledger/reckoning/diagnosis/reason-codes'
import type { WheelsWording } from './wheels.ts'

/** What the value of a field shows, to be printed after the field and its value. */
export type ReasonsWording = {
  readonly [Code in ReasonCode]: (values: ReasonValues<Code>, wheels: WheelsWording) => string
}

type Words = { readonly reasons: ReasonsWording; readonly wheels: WheelsWording }

/** The words of one reason of a finding: "at or under the 26.25 psi at which the light comes on". */
export const reasonWords = ({ reasons, wheels }: Words, { code, values }: Reason): string => {
  // The rules give every code the values of its type, and only diagnoses made by the rules are admitted.
  const wordsFor = reasons[code] as (values: Reason['values'], wheels: WheelsWording) => string
  return wordsFor(values, wheels)
}
