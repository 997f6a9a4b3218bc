import { describe, expect, it } from 'vitest'
import { cameFrom, movedPlaces } from '../rotation/moves.ts'
import { patternMoves, RotationPattern } from '../rotation/rotation-pattern.ts'
import { readingOrder } from '../wheels.ts'
import { moveArrows } from './move-arrows.ts'
import { type Point, planCells, type Rectangle } from './plan-geometry.ts'

const isOnEdge = ({ x, y }: Point, box: Rectangle): boolean =>
  x >= box.x &&
  x <= box.x + box.width &&
  y >= box.y &&
  y <= box.y + box.height &&
  (x === box.x || x === box.x + box.width || y === box.y || y === box.y + box.height)

const isInside = ({ x, y }: Point, box: Rectangle): boolean =>
  x > box.x && x < box.x + box.width && y > box.y && y < box.y + box.height

const between = (from: Point, to: Point): Point[] =>
  Array.from({ length: 101 }, (_, at) => ({
    x: from.x + ((to.x - from.x) * at) / 100,
    y: from.y + ((to.y - from.y) * at) / 100,
  }))

describe.each(RotationPattern.options)('the arrows of %s', (pattern) => {
  const moves = patternMoves(pattern)
  const arrows = moveArrows(moves)

  it('are one for each wheel that moves, from where it was to where it goes', () => {
    expect(arrows.map(({ from, to }) => [from, to])).toEqual(
      movedPlaces(moves).map((to) => [cameFrom(moves, to), to]),
    )
  })

  it('begin and point at the edge of their cells, and cross no cell on the way', () => {
    for (const { from, to, line, head } of arrows) {
      expect(isOnEdge(line.from, planCells[from].box)).toBe(true)
      expect(isOnEdge(head[0], planCells[to].box)).toBe(true)
      for (const point of between(line.from, head[0]))
        expect(readingOrder.filter((place) => isInside(point, planCells[place].box))).toEqual([])
    }
  })

  it('have their heads at the end of their lines', () => {
    for (const { line, head } of arrows) {
      const [tip, one, other] = head
      const base = { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 }
      expect(base.x).toBeCloseTo(line.to.x)
      expect(base.y).toBeCloseTo(line.to.y)
      expect(Math.hypot(tip.x - base.x, tip.y - base.y)).toBeCloseTo(16)
    }
  })
})

it('lie side by side where two wheels exchange their places', () => {
  const starts = moveArrows(patternMoves('side-to-side')).map(({ line }) => line.from.y)
  expect(new Set(starts).size).toBe(4)
  const [forward, back] = moveArrows({ LF: 'LR', LR: 'LF' })
  expect(forward?.line.from.x).not.toBe(back?.line.from.x)
})

it('are none where nothing moves', () => {
  expect(moveArrows({})).toEqual([])
})
