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
 * The places that get another wheel, in reading order.
 *
 * @source Definition of the moved points of a permutation.
 */
export const movedPlaces = (moves: Moves): WheelPosition[] =>
  readingOrder.filter((place) => cameFrom(moves, place) !== place)
