import type { WearAt } from '@bayledger/ledger/questions/wear-seen'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { TirePrintsWording } from './tire-prints.ts'

/** What the wear of a tire hints at, each hint in a sentence or two; none where it hints at nothing. */
export const wornTireWords = (
  words: TirePrintsWording,
  wheel: WheelPosition,
  { across, around }: WearAt,
): string[] => [
  ...(across ? [words.wornAcross({ wheel, across: across.read, hint: across.hint })] : []),
  ...(around ? [words.wornAround({ wheel, seen: around })] : []),
]
