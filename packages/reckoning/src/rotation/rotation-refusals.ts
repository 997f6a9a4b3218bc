import { type TireSize, tireSizeText } from '../tire/tire-size.ts'
import { type WheelPosition, wheelNames } from '../wheels.ts'
import { cameFrom, type Moves, movedPlaces } from './moves.ts'
import type { RotatingWheel } from './rotating-wheel.ts'

export type RotationFault =
  | 'wheel-not-known'
  | 'temporary-spare'
  | 'directional'
  | 'size-differs'
  | 'load-lower'

/** Why the wheel of one place may not go to another. */
export type RotationRefusal = {
  readonly fault: RotationFault
  readonly from: WheelPosition
  readonly to: WheelPosition
  readonly words: string
}

export type WheelsByPlace = Readonly<Record<WheelPosition, RotatingWheel | null>>

/**
 * Every reason why the tires do not allow some moves; none where they may be made. The vehicle maker's own instructions
 * and the markings on the tires govern; a tire that the label does not name for a place is never moved there.
 *
 * @limits A directional tire stays on its side, and neither comes from the spare's place nor goes there, because
 * a spare is on no side. A tire goes only where one of its size was, and never where one of a higher load index
 * (or, where no index is printed, of another load mark) was. A temporary spare takes no part.
 * @source Common practice, no source: arrows on sidewalls, sizes by axle, and the speed and distance limits printed on
 * temporary spares.
 */
export const rotationRefusals = (moves: Moves, wheels: WheelsByPlace): RotationRefusal[] =>
  movedPlaces(moves).flatMap((to) => {
    const from = cameFrom(moves, to)
    const goes = wheels[from]
    const stood = wheels[to]
    const refuse = (fault: RotationFault, words: string): RotationRefusal => ({ fault, from, to, words })
    if (goes === null || stood === null)
      return [
        refuse(
          'wheel-not-known',
          `No wheel is known at the ${placeWords(goes === null ? from : to)}. Enter its tire, or choose a pattern without that place.`,
        ),
      ]
    return [
      ...(goes.tire.temporary || stood.tire.temporary
        ? [
            refuse(
              'temporary-spare',
              `The ${placeWords(goes.tire.temporary ? from : to)} carries a temporary spare: it is for the way to a shop, not for a rotation.`,
            ),
          ]
        : []),
      ...(goes.tire.directional && sideOf(from) !== sideOf(to)
        ? [
            refuse(
              'directional',
              `The ${placeWords(from)} tire rolls one way only and would stand the other way round at the ${placeWords(to)}. Rotate front to back, or remount it.`,
            ),
          ]
        : []),
      ...sizeRefusals(goes.tire.size, stood.tire.size, from, to).map(([fault, words]) =>
        refuse(fault, words),
      ),
    ]
  })

const sizeRefusals = (
  goes: TireSize,
  stood: TireSize,
  from: WheelPosition,
  to: WheelPosition,
): [RotationFault, string][] => {
  if (dimensionsOf(goes) !== dimensionsOf(stood))
    return [
      [
        'size-differs',
        `${dimensionsOf(goes)} from the ${placeWords(from)} does not belong at the ${placeWords(to)}, where ${dimensionsOf(stood)} stands.`,
      ],
    ]
  return carriesLess(goes, stood)
    ? [
        [
          'load-lower',
          `${tireSizeText(goes)} from the ${placeWords(from)} may carry less than ${tireSizeText(stood)}, which stands at the ${placeWords(to)}.`,
        ],
      ]
    : []
}

const dimensionsOf = (size: TireSize): string => tireSizeText({ ...size, service: null, loadMark: null })

/** Standard load is also where nothing is printed. */
const carriesLess = (goes: TireSize, stood: TireSize): boolean =>
  goes.service !== null && stood.service !== null
    ? goes.service.loadIndex < stood.service.loadIndex
    : (goes.loadMark ?? 'SL') !== (stood.loadMark ?? 'SL')

const sideOf = (position: WheelPosition): 'left' | 'right' | 'none' =>
  position === 'SP' ? 'none' : position === 'LF' || position === 'LR' ? 'left' : 'right'

const placeWords = (position: WheelPosition): string =>
  position === 'SP' ? "spare's place" : wheelNames[position]
