import { poundsFrom } from '../units/mass-units.ts'
import { type Kilograms, kilograms } from '../units/measured.ts'

/**
 * The most that a tire of this load index carries, at the pressure that its standard rates it at; `null` for an index
 * that is not in the table: none is ever reckoned from its neighbors. What a tire carries at another pressure is in
 * its maker's table, and the vehicle maker's label governs what a vehicle needs.
 *
 * @formula the table below
 * @units kg, one tire
 * @limits load indices 60 to 140
 * @source ISO 4000-1, ETRTO and UN R30, table of load indices (read in public code files that agree; the standards
 * themselves were not read)
 */
export const loadOfIndex = (index: number): Kilograms | null => {
  const load = table[index - firstIndex]
  return load === undefined ? null : kilograms(load)
}

/**
 * The load of a load index in pounds, as tire charts print it; `null` where the index is not in the table. 91 is
 * 1,356 lb.
 *
 * @formula kg / 0.45359237, rounded to the pound
 * @units lb, one tire
 * @limits load indices 60 to 140; some printed charts cut the fraction off instead, and show a pound less
 * @source as for `loadOfIndex`; pound 0.45359237 kg (computed from definition)
 */
export const poundsOfIndex = (index: number): number | null => {
  const load = loadOfIndex(index)
  return load === null ? null : Math.round(poundsFrom(load))
}

const firstIndex = 60

/** Kilograms from load index 60 on, ten to a row. */
const table = [
  ...[250, 257, 265, 272, 280, 290, 300, 307, 315, 325],
  ...[335, 345, 355, 365, 375, 387, 400, 412, 425, 437],
  ...[450, 462, 475, 487, 500, 515, 530, 545, 560, 580],
  ...[600, 615, 630, 650, 670, 690, 710, 730, 750, 775],
  ...[800, 825, 850, 875, 900, 925, 950, 975, 1_000, 1_030],
  ...[1_060, 1_090, 1_120, 1_150, 1_180, 1_215, 1_250, 1_285, 1_320, 1_360],
  ...[1_400, 1_450, 1_500, 1_550, 1_600, 1_650, 1_700, 1_750, 1_800, 1_850],
  ...[1_900, 1_950, 2_000, 2_060, 2_120, 2_180, 2_240, 2_300, 2_360, 2_430],
  2_500,
]
