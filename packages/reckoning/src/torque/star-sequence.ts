/**
 * The order in which the fasteners of a wheel are tightened: 1 is nearest the valve, counted clockwise. A sequence
 * that the vehicle maker publishes goes before it.
 *
 * @limits 3 to 8 and 10 fasteners; a `RangeError` with the reason for any other count, which a specification sheet holds
 * only with the vehicle maker's own order.
 * @source Common practice, no source. The orders of 4 and 5 were read in print, those of 6, 8 and 10 are from memory,
 * that of 7 is made to the same rule.
 */
export const starSequence = (studs: number): readonly number[] => {
  const sequence = sequences[studs]
  if (!sequence)
    throw new RangeError(
      `no star for ${studs} fasteners: no source gives one, and none is made up; the vehicle maker's own order is needed`,
    )
  return sequence
}

/**
 * Whether there is a star for this many fasteners. There is none for 9: no published order of tightening for it was
 * found, and one that this program made up could draw a wheel on crooked.
 *
 * @source This program's own rule: the counts for which an order was read or is common practice.
 */
export const hasStarSequence = (studs: number): boolean => sequences[studs] !== undefined

/**
 * The order for a vehicle's wheels: the vehicle maker's own where the specification sheet has one, else the star.
 *
 * @source The vehicle maker's sequence governs; else see `starSequence`.
 */
export const tighteningOrder = (studs: {
  readonly count: number
  readonly makersSequence: readonly number[] | null
}): readonly number[] => studs.makersSequence ?? starSequence(studs.count)

const sequences: Readonly<Record<number, readonly number[]>> = {
  3: [1, 2, 3],
  4: [1, 3, 2, 4],
  5: [1, 3, 5, 2, 4],
  6: [1, 4, 2, 5, 3, 6],
  7: [1, 4, 7, 3, 6, 2, 5],
  8: [1, 5, 3, 7, 2, 6, 4, 8],
  10: [1, 6, 9, 4, 7, 2, 5, 10, 3, 8],
}
