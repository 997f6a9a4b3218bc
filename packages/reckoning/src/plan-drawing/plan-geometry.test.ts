import { describe, expect, it } from 'vitest'
import { inReadingOrder, readingOrder } from '../wheels.ts'
import { planCells, planView, type Rectangle } from './plan-geometry.ts'

const overlap = (one: Rectangle, other: Rectangle) =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height

const mirrored = (box: Rectangle): Rectangle => ({ ...box, x: planView.width - box.x - box.width })

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
