import type { MoveCode, MoveValues } from '@bayledger/ledger/questions/move'
import type { WheelPosition } from '@bayledger/reckoning/wheels'

/** What an order waits for, each move a function of its wheel and its values. */
export type MovesWording = {
  readonly [Code in MoveCode]: (wheel: WheelPosition | null, values: MoveValues[Code]) => string
}

export const moveWords = <Code extends MoveCode>(
  words: MovesWording,
  move: { readonly code: Code; readonly wheel: WheelPosition | null; readonly values: MoveValues[Code] },
): string => words[move.code](move.wheel, move.values)
