import { movedPlaces } from '@bayledger/reckoning/rotation/moves'
import { patternsAllowed } from '@bayledger/reckoning/rotation/patterns-allowed'
import { patternMoves, type RotationPattern } from '@bayledger/reckoning/rotation/rotation-pattern'
import {
  type RotatingTire,
  type RotationRefusal,
  rotationRefusals,
  type TiresByPlace,
} from '@bayledger/reckoning/rotation/rotation-refusals'
import { sizeBySheet } from '@bayledger/reckoning/rotation/size-by-sheet'
import { tiresOf } from '@bayledger/reckoning/sheet'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import type { TireSize } from '@bayledger/reckoning/tire/tire-size'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'
import type { TiresSeen } from '../subjects/work/tires-seen.ts'

/** What the tires refuse of a rotation, and the patterns that they would still allow. */
export type RotationRefused = {
  readonly refusals: readonly RotationRefusal[]
  readonly allowed: readonly RotationPattern[]
}

/** The moved wheels of which no look has recorded a size, so that the technician is asked for it. */
export const sizesToSee = (state: OrderState, pattern: RotationPattern): WheelPosition[] =>
  movedPlaces(patternMoves(pattern)).filter((wheel) => sizeOnRecord(state, wheel) === null)

/** What the tires say against a rotation, by what is on record and what was seen now; `null`: nothing. */
export const rotationRefused = (
  state: OrderState,
  pattern: RotationPattern,
  seen: TiresSeen,
): RotationRefused | null => {
  const tires = tiresByPlace(state, pattern, seen)
  const refusals = rotationRefusals(patternMoves(pattern), tires)
  if (refusals.length === 0) return null
  return { refusals, allowed: state.sheet === null ? [] : patternsAllowed(state.sheet.sheet, tires) }
}

const tiresByPlace = (state: OrderState, pattern: RotationPattern, seen: TiresSeen): TiresByPlace => {
  const moved = movedPlaces(patternMoves(pattern))
  const tireAt = (wheel: WheelPosition): RotatingTire | null => {
    const size =
      sizeOf(seen.sizes[wheel]) ??
      sizeOnRecord(state, wheel) ??
      // Of a tire that nobody looked at, what the sheet says is no knowledge.
      (moved.includes(wheel) ? sheetSize(state, wheel) : null)
    return (
      size && { size, directional: seen.arrows.includes(wheel), temporary: isTemporary(state, wheel, size) }
    )
  }
  return { LF: tireAt('LF'), RF: tireAt('RF'), RR: tireAt('RR'), LR: tireAt('LR'), SP: tireAt('SP') }
}

const sizeOf = (text: string | undefined): TireSize | null => {
  const read = text === undefined ? null : readTireSize(text)
  return read?.ok ? read.value : null
}

const sizeOnRecord = (state: OrderState, wheel: WheelPosition): TireSize | null => {
  const seen = state.arrival.tires[wheel]?.sizeSeen
  return seen?.readable && !isReplaced(state, wheel) ? sizeOf(seen.text) : null
}

const sheetSize = (state: OrderState, wheel: WheelPosition): TireSize | null => {
  const tire = tiresOf(state.sheet?.sheet)?.[axleOf(wheel)]
  return tire ? sizeBySheet(tire) : null
}

/** What was seen on arrival says nothing of a tire that replaces that one in the same order. */
const isReplaced = ({ plan }: OrderState, place: WheelPosition): boolean =>
  (plan?.plan.steps ?? []).some(({ code, wheel }) => code === 'match-tire' && wheel === place)

const isTemporary = (state: OrderState, wheel: WheelPosition, size: TireSize): boolean =>
  (size.kind === 'metric' && size.prefix === 'T') ||
  (state.arrival.wheels[wheel]?.mounted === 'temporary-spare' && !isReplaced(state, wheel))
