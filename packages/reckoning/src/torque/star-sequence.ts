/**
 * The order in which the fasteners of a wheel are tightened: 1 is nearest the valve, counted clockwise. Common
 * practice (no source); a sequence that the vehicle maker publishes goes before it.
 */
export const starSequence = (studs: number): readonly number[] => {
  const sequence = sequences[studs]
  if (!sequence)
    throw new RangeError(`no star for ${studs} fasteners; wheels of this shop have 3 to 8, or 10`)
  return sequence
}

/** Whether there is a star for this many fasteners. */
export const hasStarSequence = (studs: number): boolean => sequences[studs] !== undefined

const sequences: Readonly<Record<number, readonly number[]>> = {
  3: [1, 2, 3],
  4: [1, 3, 2, 4],
  5: [1, 3, 5, 2, 4],
  6: [1, 4, 2, 5, 3, 6],
  7: [1, 4, 7, 3, 6, 2, 5],
  8: [1, 5, 3, 7, 2, 6, 4, 8],
  10: [1, 6, 9, 4, 7, 2, 5, 10, 3, 8],
}

/** Degrees between two fasteners of a wheel, the short way round: 0 to 180. */
export const degreesApart = (one: number, other: number, studs: number): number => {
  const around = (Math.abs(one - other) * 360) / studs
  return Math.min(around, 360 - around)
}
