/** What is wrong with an order of tightening; the first fault that is found. */
export type SequenceFault = 'wrong-count' | 'no-such-fastener' | 'named-twice' | 'too-near'

/** A fault with the fasteners that it lies in. */
export type SequenceDoubt = { readonly fault: SequenceFault; readonly at: readonly number[] }

/**
 * What makes an order of tightening wrong: a fastener left out, one that the wheel does not have, one named twice,
 * or two neighbors in a row, which would draw the wheel tight on one side before the other seats. `null` where it is
 * right.
 *
 * @formula The order names 1 to n once each, and each step goes at least `leastDegreesApart` round the wheel.
 * @units Fasteners numbered clockwise from the one nearest the valve.
 * @source Common practice, no source: opposite sides in turn.
 */
export const sequenceDoubt = (order: readonly number[], studs: number): SequenceDoubt | null => {
  const foreign = order.find((stud) => !Number.isInteger(stud) || stud < 1 || stud > studs)
  if (foreign !== undefined) return { fault: 'no-such-fastener', at: [foreign] }
  const twice = order.find((stud, index) => order.indexOf(stud) !== index)
  if (twice !== undefined) return { fault: 'named-twice', at: [twice] }
  if (order.length !== studs) return { fault: 'wrong-count', at: order }
  for (const [index, stud] of order.slice(1).entries()) {
    const before = order[index] ?? stud
    if (degreesApart(before, stud, studs) < leastDegreesApart(studs, index + 1) - rounding)
      return { fault: 'too-near', at: [before, stud] }
  }
  return null
}

/**
 * How far round the wheel a step of a right order goes at least: a third of the way where there are 3, 5 or 6
 * fasteners, a quarter else. Of four, a quarter is already the neighbor, so there the first step and the third go
 * across.
 *
 * @units Degrees; the step from the first fastener to the second is step 1.
 * @source Common practice, no source, put into degrees by this program.
 */
export const leastDegreesApart = (studs: number, step: number): number => {
  if (studs === 4) return step % 2 === 1 ? 180 : 90
  return [3, 5, 6].includes(studs) ? 120 : 90
}

/**
 * The angle between two fasteners of a wheel, the short way round.
 *
 * @formula |one - other| · 360° / n, or what is left of the full circle if that is less.
 * @units Degrees, 0 to 180.
 * @source Geometry: fasteners evenly spaced on a circle.
 */
export const degreesApart = (one: number, other: number, studs: number): number => {
  const around = (Math.abs(one - other) * 360) / studs
  return Math.min(around, 360 - around)
}

/** Degrees by which a quotient of whole numbers may miss a whole angle. */
const rounding = 1e-9
