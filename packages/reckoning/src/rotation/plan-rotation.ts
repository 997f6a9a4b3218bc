import { type RotatedTarget, targetsAfterRotation } from '../pressure/rotated-targets.ts'
import { placardOf, type SpecificationSheet } from '../sheet.ts'
import { inReadingOrder, type WheelPosition } from '../wheels.ts'
import { cameFrom, carried, type Moves, movedPlaces } from './moves.ts'
import { patternMoves, type RotationPattern } from './rotation-pattern.ts'
import { type RotationRefusal, rotationRefusals, type WheelsByPlace } from './rotation-refusals.ts'

/** What has to be done after wheels were moved, in the order of the work. */
export type AfterRotation =
  | { readonly does: 'torque'; readonly wheels: readonly WheelPosition[] }
  | { readonly does: 'set-pressures'; readonly targets: readonly RotatedTarget[] }
  /** The vehicle finds out by itself while it is driven; its stored places are read back all the same. */
  | { readonly does: 'let-it-locate'; readonly places: readonly WheelPosition[] }
  | { readonly does: 'relearn'; readonly places: readonly WheelPosition[] }
  | { readonly does: 'reset' }
  /** Whether the vehicle has sensors is not known: that is settled first, because a relearn may be owed. */
  | { readonly does: 'settle-system' }

export type RotationPlan =
  | {
      readonly ok: true
      readonly moves: Moves
      readonly wheels: WheelsByPlace
      /** The IDs that the vehicle must hold afterward, at the places on which it listens; `null`: none was read. */
      readonly storedIds: Readonly<Partial<Record<WheelPosition, string | null>>>
      readonly after: readonly AfterRotation[]
    }
  | { readonly ok: false; readonly refusals: readonly RotationRefusal[] }

/**
 * Computes a rotation before a wheel is touched: whether the tires allow it, where each wheel goes with its sensor, tire
 * and notes, which IDs the vehicle must then hold at which place, and what has to follow.
 *
 * @limits Only wheels that change places are torqued; pressures are set again wherever a wheel came from another place,
 * because the label's figure belongs to the place.
 * @source Common practice, no source. The vehicle maker's pattern, torque and label govern.
 */
export const planRotation = (
  pattern: RotationPattern,
  sheet: SpecificationSheet,
  wheels: WheelsByPlace,
): RotationPlan => {
  const moves = patternMoves(pattern)
  const refusals = rotationRefusals(moves, wheels)
  if (refusals.length > 0) return { ok: false, refusals }
  const after = carried(moves, wheels)
  return {
    ok: true,
    moves,
    wheels: after,
    storedIds: expectedIds(sheet, after),
    after: whatFollows(sheet, moves),
  }
}

/**
 * The ID of each wheel at its present place, for the places where the vehicle listens for a sensor; none
 * where it has no sensors.
 *
 * @source This program's own rule: the IDs that the vehicle holds must equal those in the wheels.
 */
export const expectedIds = (
  sheet: Pick<SpecificationSheet, 'system' | 'spare' | 'spareMonitored'>,
  wheels: WheelsByPlace,
): Readonly<Partial<Record<WheelPosition, string | null>>> =>
  Object.fromEntries(listenedPlaces(sheet).map((place) => [place, wheels[place]?.sensorId ?? null]))

const listenedPlaces = ({
  system,
  spare,
  spareMonitored,
}: Pick<SpecificationSheet, 'system' | 'spare' | 'spareMonitored'>): WheelPosition[] =>
  system === 'indirect' || system === 'none'
    ? []
    : ['LF', 'RF', 'RR', 'LR', ...(spareMonitored && spare !== 'none' ? (['SP'] as const) : [])]

const whatFollows = (sheet: SpecificationSheet, moves: Moves): AfterRotation[] => {
  const moved = movedPlaces(moves)
  const from = Object.fromEntries(moved.map((place) => [place, cameFrom(moves, place)]))
  return [
    { does: 'torque', wheels: moved.filter((place) => place !== 'SP') },
    { does: 'set-pressures', targets: targetsAfterRotation(placardOf(sheet), from) },
    ...learning(sheet, moved),
  ]
}

const learning = (sheet: SpecificationSheet, moved: readonly WheelPosition[]): AfterRotation[] => {
  const places = inReadingOrder(moved.filter((place) => listenedPlaces(sheet).includes(place)))
  switch (sheet.system) {
    case 'direct':
      return [{ does: sheet.locatesWheels ? 'let-it-locate' : 'relearn', places }]
    case 'indirect':
      return [{ does: 'reset' }]
    case 'unknown':
      return [{ does: 'settle-system' }]
    case 'none':
      return []
  }
}
