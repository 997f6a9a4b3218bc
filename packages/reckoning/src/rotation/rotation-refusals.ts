import { type TireSize, tireSizeText } from '../tire/tire-size.ts'
import type { WheelPosition } from '../wheels.ts'
import { cameFrom, type Moves, movedPlaces } from './moves.ts'
import type { RotatingWheel } from './rotating-wheel.ts'

/** Why the wheel of one place may not go to another. */
export type RotationRefusal = { readonly from: WheelPosition; readonly to: WheelPosition } & (
  | { readonly fault: 'wheel-not-known' | 'temporary-spare'; readonly place: WheelPosition }
  | { readonly fault: 'directional' }
  | { readonly fault: 'size-differs' | 'load-lower'; readonly goes: TireSize; readonly stood: TireSize }
)

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
  movedPlaces(moves).flatMap((to): RotationRefusal[] => {
    const from = cameFrom(moves, to)
    const goes = wheels[from]
    const stood = wheels[to]
    if (goes === null || stood === null)
      return [{ fault: 'wheel-not-known', from, to, place: goes === null ? from : to }]
    const refusals: RotationRefusal[] = []
    if (goes.tire.temporary || stood.tire.temporary)
      refusals.push({ fault: 'temporary-spare', from, to, place: goes.tire.temporary ? from : to })
    if (goes.tire.directional && sideOf(from) !== sideOf(to))
      refusals.push({ fault: 'directional', from, to })
    const fault = sizeFault(goes.tire.size, stood.tire.size)
    if (fault !== null) refusals.push({ fault, from, to, goes: goes.tire.size, stood: stood.tire.size })
    return refusals
  })

const sizeFault = (goes: TireSize, stood: TireSize): 'size-differs' | 'load-lower' | null => {
  if (dimensionsOf(goes) !== dimensionsOf(stood)) return 'size-differs'
  return carriesLess(goes, stood) ? 'load-lower' : null
}

const dimensionsOf = (size: TireSize): string => tireSizeText({ ...size, service: null, loadMark: null })

/** Standard load is also where nothing is printed. */
const carriesLess = (goes: TireSize, stood: TireSize): boolean =>
  goes.service !== null && stood.service !== null
    ? goes.service.loadIndex < stood.service.loadIndex
    : (goes.loadMark ?? 'SL') !== (stood.loadMark ?? 'SL')

const sideOf = (position: WheelPosition): 'left' | 'right' | 'none' =>
  position === 'SP' ? 'none' : position === 'LF' || position === 'LR' ? 'left' : 'right'
