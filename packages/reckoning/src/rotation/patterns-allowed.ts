import type { SpecificationSheet } from '../sheet.ts'
import { patternMoves, RotationPattern } from './rotation-pattern.ts'
import { rotationRefusals, type TiresByPlace } from './rotation-refusals.ts'
import { sheetDoubts } from './sheet-doubts.ts'

/**
 * The patterns against which neither the sheet nor the tires say anything. What the vehicle maker allows governs.
 *
 * @limits A pattern that takes the spare is left out as long as the spare's size is not known.
 * @source as in `sheetDoubts` and `rotationRefusals`
 */
export const patternsAllowed = (
  sheet: Pick<SpecificationSheet, 'spare' | 'staggered' | 'tire'>,
  tires: TiresByPlace,
): RotationPattern[] =>
  RotationPattern.options.filter((pattern) => {
    const moves = patternMoves(pattern)
    return sheetDoubts(moves, sheet).length === 0 && rotationRefusals(moves, tires).length === 0
  })
