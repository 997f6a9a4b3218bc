import type { WheelPosition } from '../wheels.ts'

/**
 * The vehicle from above, nose up, as pure geometry: screens, paper and the sealed report draw the same figure
 * from it. Lengths are units of the view box; x grows to the right, y downward, so the left of the drawing is
 * the vehicle's left.
 */
export const planView = { width: 360, height: 506 } as const

export type Rectangle = {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}
export type Point = { readonly x: number; readonly y: number }
export type Rule = { readonly from: Point; readonly to: Point }
export type Ring = { readonly center: Point; readonly radius: number; readonly stroke: number }

export type PlanCell = {
  /** Where the wheel's figures are. */
  readonly box: Rectangle
  /** The same, grown: the wheel at work is the largest thing on the drawing. */
  readonly boxAtWork: Rectangle
  /** Drawn in place of the box for a wheel that is off and not torqued; it sticks out of the drawing. */
  readonly ring: Ring
}

const middle = planView.width / 2
const left = middle - 38
const right = middle + 38
const nose = 14
const tail = 372

// Wheels overlap the body a little, as on a vehicle, so that their text has room.
const wheelWidth = 150
const wheelHeight = 104
const edge = 2
const frontY = 62
const rearY = 238

/** The body as one closed outline, in SVG path words that PDF writers read too. */
export const planOutline = [
  `M ${left} ${nose + 44}`,
  `L ${middle - 18} ${nose}`,
  `L ${middle + 18} ${nose}`,
  `L ${right} ${nose + 44}`,
  `L ${right} ${tail}`,
  `L ${left} ${tail}`,
  'Z',
].join(' ')

/** Fine rules: windshield and rear window by suggestion, the two axles, and the tie to the spare. */
export const planRules: readonly Rule[] = [
  { from: { x: left, y: 180 }, to: { x: right, y: 180 } },
  { from: { x: left + 8, y: 190 }, to: { x: right - 8, y: 190 } },
  { from: { x: left + 8, y: 214 }, to: { x: right - 8, y: 214 } },
  { from: { x: left, y: 224 }, to: { x: right, y: 224 } },
  axle(frontY),
  axle(rearY),
  { from: { x: middle, y: tail }, to: { x: middle, y: tail + 14 } },
]

/** Each wheel's place. */
export const planCells: Readonly<Record<WheelPosition, PlanCell>> = {
  LF: cell({ x: edge, y: frontY, width: wheelWidth, height: wheelHeight }),
  RF: cell({ x: planView.width - edge - wheelWidth, y: frontY, width: wheelWidth, height: wheelHeight }),
  RR: cell({ x: planView.width - edge - wheelWidth, y: rearY, width: wheelWidth, height: wheelHeight }),
  LR: cell({ x: edge, y: rearY, width: wheelWidth, height: wheelHeight }),
  SP: cell({ x: middle - wheelWidth / 2, y: tail + 14, width: wheelWidth, height: wheelHeight }),
}

function axle(wheelY: number): Rule {
  const y = wheelY + wheelHeight / 2
  return { from: { x: edge + wheelWidth, y }, to: { x: planView.width - edge - wheelWidth, y } }
}

function cell(box: Rectangle): PlanCell {
  const growth = 12
  const towardMiddle =
    box.x < middle - box.width / 2 ? 0 : box.x > middle - box.width / 2 ? growth : growth / 2
  return {
    box,
    boxAtWork: {
      x: box.x - towardMiddle,
      y: box.y - growth,
      width: box.width + growth,
      height: box.height + growth + Math.min(growth, planView.height - edge - box.y - box.height),
    },
    ring: {
      center: { x: box.x + box.width / 2, y: box.y + box.height / 2 },
      radius: Math.min(wheelWidth / 2 - 6, planView.height - edge - 5 - box.y - box.height / 2),
      stroke: 10,
    },
  }
}
