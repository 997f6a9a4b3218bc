import { compareSizes } from '../tire/compare-sizes.ts'
import { isPassengerTire } from '../tire/load-class-change.ts'
import type { TireSize } from '../tire/tire-size.ts'
import type { WheelPosition } from '../wheels.ts'
import { cameFrom, type Moves, movedPlaces } from './moves.ts'

/** What of a tire decides where it may go. */
export type RotatingTire = {
  readonly size: TireSize
  /** It has an arrow on its sidewall and rolls one way only. */
  readonly directional: boolean
  /** A temporary spare: for the way to the shop, not for a rotation. */
  readonly temporary: boolean
}

/** `null`: nobody knows its size. */
export type TiresByPlace = Readonly<Record<WheelPosition, RotatingTire | null>>

/** Why the wheel of one place may not go to another. */
export type RotationRefusal = { readonly from: WheelPosition; readonly to: WheelPosition } & (
  | { readonly fault: 'size-not-known'; readonly place: WheelPosition }
  | { readonly fault: 'temporary-spare'; readonly place: WheelPosition }
  | { readonly fault: 'directional' }
  | { readonly fault: 'size-differs'; readonly goes: TireSize; readonly stood: TireSize }
  | { readonly fault: 'load-lower'; readonly goes: TireSize; readonly stood: TireSize }
)

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
export const rotationRefusals = (moves: Moves, tires: TiresByPlace): RotationRefusal[] =>
  movedPlaces(moves).flatMap((to): RotationRefusal[] => {
    const from = cameFrom(moves, to)
    const goes = tires[from]
    const stood = tires[to]
    if (goes === null || stood === null)
      return [{ fault: 'size-not-known', from, to, place: goes === null ? from : to }]
    const refusals: RotationRefusal[] = []
    if (goes.temporary || stood.temporary)
      refusals.push({ fault: 'temporary-spare', from, to, place: goes.temporary ? from : to })
    if (goes.directional && sideOf(from) !== sideOf(to)) refusals.push({ fault: 'directional', from, to })
    const fault = sizeFault(goes.size, stood.size)
    if (fault !== null) refusals.push({ fault, from, to, goes: goes.size, stood: stood.size })
    return refusals
  })

const sizeFault = (goes: TireSize, stood: TireSize): 'size-differs' | 'load-lower' | null => {
  const { isOtherSize, loadIndexApart } = compareSizes(stood, goes)
  if (isOtherSize || goes.runFlat !== stood.runFlat) return 'size-differs'
  return loadIndexApart === null ? markFault(goes, stood) : loadIndexApart < 0 ? 'load-lower' : null
}

/** A passenger tire without a mark is for standard load; of any other tire nothing printed says nothing. */
const markFault = (goes: TireSize, stood: TireSize): 'load-lower' | null => {
  const [mark, before] = [goes, stood].map((size) => size.loadMark ?? (isPassengerTire(size) ? 'SL' : null))
  return mark !== null && before !== null && mark !== before ? 'load-lower' : null
}

const sideOf = (position: WheelPosition): 'left' | 'right' | 'none' =>
  position === 'SP' ? 'none' : position === 'LF' || position === 'LR' ? 'left' : 'right'
