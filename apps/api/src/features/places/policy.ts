import type { PlaceContent } from '@bayledger/contract/places'
import type { FieldProblem } from '@bayledger/contract/problem'
import { doubtWords } from '../../words/doubt-words.ts'

/** Feet. No road of the country is higher, and no shop lies lower (the trade's expectation, no source). */
const usualAltitudeFeet = { low: -300, high: 11_500 }

/** What of a place may be right and is likely a slip. */
export const doubtsOf = ({ altitudeFeet }: PlaceContent): FieldProblem[] => {
  const { low, high } = usualAltitudeFeet
  if (altitudeFeet >= low && altitudeFeet <= high) return []
  return [{ field: 'altitudeFeet', found: String(altitudeFeet), allowed: doubtWords.altitude(low, high) }]
}
