import type { SpecificationSheet } from '../sheet.ts'
import { axleOf } from '../wheels.ts'
import { cameFrom, type Moves, movedPlaces } from './moves.ts'
import type { RotationDoubt } from './rotation-doubt.ts'

/**
 * What the sheet by itself says against some moves, before any tire is inspected; empty if nothing. The tires
 * themselves may still refuse (`rotationRefusals`). What the vehicle maker allows governs.
 *
 * @limits Where front and rear tires differ, no wheel leaves its axle. Only a full-size spare of the tires' own size
 * takes part.
 * @source Common practice, no source: sizes by axle, and the limits printed on temporary spares.
 */
export const sheetDoubts = (
  moves: Moves,
  { spare, staggered, tire }: Pick<SpecificationSheet, 'spare' | 'staggered' | 'tire'>,
): RotationDoubt[] => {
  const moved = movedPlaces(moves)
  const tires = tire === 'missing' ? null : tire
  const isUnlike = staggered || tires?.front.size !== tires?.rear.size
  const leavesAxle = moved.some((place) => {
    const from = cameFrom(moves, place)
    return place !== 'SP' && from !== 'SP' && axleOf(place) !== axleOf(from)
  })
  const takesSpare = moved.includes('SP')
  return [
    ...(tires === null && moved.length > 0 ? (['tires-not-on-sheet'] as const) : []),
    ...(isUnlike && leavesAxle ? (['axles-differ'] as const) : []),
    ...(takesSpare && spare !== 'full-size'
      ? [spare === 'none' || spare === 'unknown' ? ('no-spare' as const) : ('spare-temporary' as const)]
      : []),
    ...(takesSpare && spare === 'full-size' && (isUnlike || tires?.spare?.size !== tires?.front.size)
      ? (['spare-size-differs'] as const)
      : []),
  ]
}
