import { describe, expect, it } from 'vitest'
import { inReadingOrder, readingOrder } from '../wheels.ts'
import { type Point, planCells, planOutline, planRules, planView, type Rectangle } from './plan-geometry.ts'

const overlap = (one: Rectangle, other: Rectangle) =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height

const mirrored = (box: Rectangle): Rectangle => ({ ...box, x: planView.width - box.x - box.width })

const mirroredPoint = ({ x, y }: Point): Point => ({ x: planView.width - x, y })

const asText = (points: readonly Point[]): string[] => points.map(({ x, y }) => `${x} ${y}`).sort()

describe('the plan drawing', () => {
  it('has a cell for every wheel, nose up, the left of the vehicle at the left, the spare behind', () => {
    expect(inReadingOrder(Object.keys(planCells) as (keyof typeof planCells)[])).toEqual(readingOrder)
    const { LF, RF, RR, LR, SP } = planCells
    expect(LF.box.x).toBeLessThan(RF.box.x)
    expect(LF.box.y).toBeLessThan(LR.box.y)
    expect(LR.box.y).toBe(RR.box.y)
    expect(SP.box.y).toBeGreaterThan(LR.box.y + LR.box.height)
  })

  it('is the same left and right', () => {
    for (const kind of ['box', 'boxAtWork'] as const) {
      expect(mirrored(planCells.LF[kind])).toEqual(planCells.RF[kind])
      expect(mirrored(planCells.LR[kind])).toEqual(planCells.RR[kind])
      expect(mirrored(planCells.SP[kind])).toEqual(planCells.SP[kind])
    }
  })

  it('has a body of one closed outline, the same left and right, narrower at the nose', () => {
    expect(planOutline).toMatch(/^M [\d.]+ [\d.]+( L [\d.]+ [\d.]+){5} Z$/)
    const points = [...planOutline.matchAll(/([\d.]+) ([\d.]+)/g)].map(([, x, y]) => ({
      x: Number(x),
      y: Number(y),
    }))
    expect(asText(points.map(mirroredPoint))).toEqual(asText(points))
    const ys = points.map(({ y }) => y)
    const [nose, shoulder, tail] = [...new Set(ys)].sort((one, other) => one - other)
    if (nose === undefined || shoulder === undefined || tail === undefined)
      throw new Error('the body has a nose, shoulders and a tail')
    expect(ys.filter((y) => y === nose)).toHaveLength(2)
    expect(shoulder).toBeLessThan(planCells.LF.box.y)
    expect(tail).toBeGreaterThan(planCells.LR.box.y + planCells.LR.box.height)
    const widthAt = (at: number): number => {
      const xs = points.filter(({ y }) => y === at).map(({ x }) => x)
      return Math.max(...xs) - Math.min(...xs)
    }
    expect(widthAt(nose)).toBeLessThan(widthAt(tail))
    expect(widthAt(shoulder)).toBe(widthAt(tail))
    expect(widthAt(tail)).toBe(76)
    // Clockwise from the left shoulder, so that no side crosses another.
    expect(points.map(({ x, y }) => `${x < planView.width / 2 ? 'left' : 'right'} ${y}`)).toEqual([
      `left ${shoulder}`,
      `left ${nose}`,
      `right ${nose}`,
      `right ${shoulder}`,
      `right ${tail}`,
      `left ${tail}`,
    ])
  })

  it('has rules across the body, the same left and right, inside it', () => {
    const across = planRules.filter(({ from, to }) => from.y === to.y)
    for (const { from, to } of across) expect(mirroredPoint(from)).toEqual(to)
    const [left, right] = [142, 218]
    const windows = across.filter(({ from }) => from.y >= 180 && from.y <= 224)
    expect(windows.map(({ from, to }) => [from.x, to.x, from.y])).toEqual([
      [left, right, 180],
      [left + 8, right - 8, 190],
      [left + 8, right - 8, 214],
      [left, right, 224],
    ])
    expect(planRules).toHaveLength(7)
  })

  it.each([
    ['front', 'LF', 'RF'],
    ['rear', 'LR', 'RR'],
  ] as const)('ties the %s wheels by an axle from hub height to hub height', (_, left, right) => {
    const [one, other] = [planCells[left].box, planCells[right].box]
    expect(planRules).toContainEqual({
      from: { x: one.x + one.width, y: one.y + one.height / 2 },
      to: { x: other.x, y: other.y + other.height / 2 },
    })
    expect(one.y + one.height / 2).toBeGreaterThan(one.y)
  })

  it('ties the spare to the tail', () => {
    const { x, y, width } = planCells.SP.box
    expect(planRules).toContainEqual({ from: { x: x + width / 2, y: 372 }, to: { x: x + width / 2, y } })
    expect(planOutline).toContain(' 372 ')
  })

  it.each(readingOrder)('grows the cell of %s at work around its box', (position) => {
    const { box, boxAtWork } = planCells[position]
    expect(boxAtWork.width).toBe(box.width + 12)
    expect(boxAtWork.height).toBe(box.height + 24)
    expect(boxAtWork.y).toBe(box.y - 12)
    expect(boxAtWork.x).toBeLessThanOrEqual(box.x)
    expect(boxAtWork.x + boxAtWork.width).toBeGreaterThanOrEqual(box.x + box.width)
  })

  it.each(readingOrder)('centers the ring of %s on its box', (position) => {
    const { box, ring } = planCells[position]
    expect(ring.center).toEqual({ x: box.x + box.width / 2, y: box.y + box.height / 2 })
    expect(ring.radius).toBeGreaterThan(box.height / 2)
  })

  it.each(readingOrder)('keeps %s inside the view and clear of the others, at work or off', (position) => {
    const { boxAtWork, ring } = planCells[position]
    const reach = ring.radius + ring.stroke / 2
    const around = { x: ring.center.x - reach, y: ring.center.y - reach, width: 2 * reach, height: 2 * reach }
    for (const box of [boxAtWork, around]) {
      expect(box.x).toBeGreaterThanOrEqual(0)
      expect(box.y).toBeGreaterThanOrEqual(0)
      expect(box.x + box.width).toBeLessThanOrEqual(planView.width)
      expect(box.y + box.height).toBeLessThanOrEqual(planView.height)
      const others = readingOrder.filter((other) => other !== position)
      expect(others.filter((other) => overlap(box, planCells[other].boxAtWork))).toEqual([])
    }
  })
})
