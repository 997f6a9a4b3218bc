import { readingOrder, type WheelPosition } from '../wheels.ts'

/**
 * Which wheels change places: for each place that gets another wheel, the place that the wheel came from. A place that
 * is not named keeps its wheel. Always a permutation: what leaves a place arrives at one, and only one.
 */
export type Moves = Readonly<Partial<Record<WheelPosition, WheelPosition>>>

/**
 * Where the wheel that is now at a place came from.
 *
 * @source Definition of a permutation.
 */
export const cameFrom = (moves: Moves, place: WheelPosition): WheelPosition => moves[place] ?? place

/**
 * Where the wheel that was at a place went.
 *
 * @source Definition of a permutation.
 */
export const wentTo = (moves: Moves, place: WheelPosition): WheelPosition =>
  readingOrder.find((other) => cameFrom(moves, other) === place) ?? place

/**
 * The moves that put every wheel back.
 *
 * @formula composed(moves, inverse(moves)) leaves every wheel where it was.
 * @source Definition of the inverse of a permutation.
 */
export const inverse = (moves: Moves): Moves => movesThat((place) => wentTo(moves, place))

/**
 * One set of moves after another, as one.
 *
 * @formula The wheel at a place came from where the first moves had brought it before the second took it on.
 * @source Definition of the composition of permutations.
 */
export const composed = (first: Moves, second: Moves): Moves =>
  movesThat((place) => cameFrom(first, cameFrom(second, place)))

/**
 * The places that get another wheel, in reading order.
 *
 * @source Definition of the moved points of a permutation.
 */
export const movedPlaces = (moves: Moves): WheelPosition[] =>
  readingOrder.filter((place) => cameFrom(moves, place) !== place)

/**
 * What belongs to wheels, carried along with them: each place then has what the wheel that came to it had.
 *
 * @source This program's own rule: a sensor, a tire and what was noted of them go where their wheel goes.
 */
export const carried = <Thing>(
  moves: Moves,
  things: Readonly<Record<WheelPosition, Thing>>,
): Readonly<Record<WheelPosition, Thing>> => ({
  LF: things[cameFrom(moves, 'LF')],
  RF: things[cameFrom(moves, 'RF')],
  RR: things[cameFrom(moves, 'RR')],
  LR: things[cameFrom(moves, 'LR')],
  SP: things[cameFrom(moves, 'SP')],
})

const movesThat = (from: (place: WheelPosition) => WheelPosition): Moves =>
  Object.fromEntries(
    readingOrder.flatMap((place) => (from(place) === place ? [] : [[place, from(place)] as const])),
  )
