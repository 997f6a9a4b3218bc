import type { SpecificationSheet } from '../sheet.ts'
import { axleOf } from '../wheels.ts'
import { cameFrom, type Moves, movedPlaces } from './moves.ts'

/**
 * What the sheet alone says against some moves, before a tire was looked at; empty where it says nothing. The tires
 * themselves may still refuse (`rotationRefusals`). What the vehicle maker allows governs.
 *
 * @limits Where front and rear tires differ, no wheel leaves its axle. Only a full-size spare of the tires' own size
 * takes part.
 * @source Common practice, no source: sizes by axle, and the limits printed on temporary spares.
 */
export const sheetRefusals = (
  moves: Moves,
  { spare, staggered, tire }: Pick<SpecificationSheet, 'spare' | 'staggered' | 'tire'>,
): string[] => {
  const moved = movedPlaces(moves)
  const isUnlike = staggered || tire.front.size !== tire.rear.size
  const leavesAxle = moved.some((place) => {
    const from = cameFrom(moves, place)
    return place !== 'SP' && from !== 'SP' && axleOf(place) !== axleOf(from)
  })
  const takesSpare = moved.includes('SP')
  return [
    ...(isUnlike && leavesAxle
      ? ['The sheet has other tires in front than behind: no wheel leaves its axle.']
      : []),
    ...(takesSpare && spare !== 'full-size'
      ? [spare === 'none' ? 'The sheet knows no spare.' : "The sheet's spare is a temporary one."]
      : []),
    ...(takesSpare && spare === 'full-size' && (isUnlike || tire.spare?.size !== tire.front.size)
      ? ["The sheet's spare is not of the size that stands at the hubs."]
      : []),
  ]
}
