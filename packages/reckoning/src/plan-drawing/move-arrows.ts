import { type Moves, movedPlaces } from '../rotation/moves.ts'
import { axleOf, type WheelPosition } from '../wheels.ts'
import { type Point, planCells, planView, type Rule } from './plan-geometry.ts'

/** One wheel on its way to another place: a line with a head, from the edge of one cell to the edge of the other. */
export type MoveArrow = {
  readonly from: WheelPosition
  readonly to: WheelPosition
  readonly line: Rule
  readonly head: readonly [Point, Point, Point]
}

const headLength = 16
const headHalf = 8
/** Wheels that exchange their places have two arrows side by side. */
const apart = 20
/** How far from its inner corner a front wheel's way to the spare's place begins, so that it stays clear of the rear wheels. */
const beside = 2
const middle = planView.width / 2

/**
 * The arrows of wheels that change places, over the plan drawing. None crosses the cell of a third wheel.
 *
 * @units the view box of the plan drawing
 * @source This program's own drawing.
 */
export const moveArrows = (moves: Moves): MoveArrow[] =>
  movedPlaces(moves).flatMap((to) => {
    const from = moves[to]
    return from === undefined ? [] : [{ from, to, ...pointed(wayBetween(from, to)) }]
  })

const wayBetween = (from: WheelPosition, to: WheelPosition): Rule => {
  if (axleOf(from) === axleOf(to)) {
    const [one, other] = [planCells[from].box, planCells[to].box]
    const goesRight = one.x < other.x
    const y = one.y + one.height / 2 + (goesRight ? -apart : apart)
    return goesRight
      ? { from: { x: one.x + one.width, y }, to: { x: other.x, y } }
      : { from: { x: one.x, y }, to: { x: other.x + other.width, y } }
  }
  const rearward = rank(from) < rank(to)
  const [upper, lower] = rearward ? [from, to] : [to, from]
  const down = downward(upper, lower, rearward ? -apart : apart)
  return rearward ? down : { from: down.to, to: down.from }
}

/** From the lower edge of a cell to the upper edge of one behind it. */
const downward = (upper: WheelPosition, lower: WheelPosition, aside: number): Rule => {
  const [one, other] = [planCells[upper].box, planCells[lower].box]
  const isLeft = one.x < middle
  const top = one.y + one.height
  if (lower === 'SP') {
    const inward = isLeft ? 1 : -1
    const inner = isLeft ? one.x + one.width : one.x
    return axleOf(upper) === 'front'
      ? {
          from: { x: inner - inward * beside, y: top },
          to: { x: middle - inward * (apart / 2), y: other.y },
        }
      : {
          from: { x: one.x + one.width / 2 + aside, y: top },
          to: { x: middle - inward * 2 * apart + aside, y: other.y },
        }
  }
  return {
    from: { x: one.x + one.width / 2 + aside, y: top },
    to: { x: other.x + other.width / 2 + aside, y: other.y },
  }
}

const rank = (position: WheelPosition): number => ['front', 'rear', 'spare'].indexOf(axleOf(position))

/** The line ends where its head begins. */
const pointed = ({ from, to }: Rule): Pick<MoveArrow, 'line' | 'head'> => {
  const length = Math.hypot(to.x - from.x, to.y - from.y)
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length }
  const base = { x: to.x - headLength * along.x, y: to.y - headLength * along.y }
  const side = { x: -along.y * headHalf, y: along.x * headHalf }
  return {
    line: { from, to: base },
    head: [to, { x: base.x + side.x, y: base.y + side.y }, { x: base.x - side.x, y: base.y - side.y }],
  }
}
