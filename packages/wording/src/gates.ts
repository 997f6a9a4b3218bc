import type { GateCode, GateValues } from '@bayledger/ledger/questions/gate-reason'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** Why a gate is shut and what to do, each reason a function of its wheel and its values. */
export type GatesWording = {
  readonly [Code in GateCode]: (wheel: WheelPosition | null, values: GateValues[Code]) => string
}

export const gateWords = <Code extends GateCode>(
  words: GatesWording,
  reason: { readonly code: Code; readonly wheel: WheelPosition | null; readonly values: GateValues[Code] },
): string => words[reason.code](reason.wheel, reason.values)
