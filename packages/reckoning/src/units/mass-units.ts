import { kilogramsPerPound } from './exact-factors.ts'
import { type Kilograms, kilograms } from './measured.ts'

/** A load as a table or a label prints it. */
export type Mass = { readonly value: number; readonly unit: 'kg' | 'lb' }

/**
 * A load as entered, in kg. 1,389 lb is 630.0 kg.
 *
 * @formula lb × 0.45359237
 * @units kg or lb to kg
 * @source pound 0.45359237 kg, international yard and pound agreement of 1959 (computed from definition)
 */
export const inKilograms = ({ value, unit }: Mass): Kilograms =>
  kilograms(unit === 'kg' ? value : value * kilogramsPerPound)

/**
 * A load in pounds, unrounded. 615 kg is 1,355.8 lb.
 *
 * @formula kg / 0.45359237
 * @units kg to lb
 * @source as for `inKilograms` (computed from definition)
 */
export const poundsFrom = (load: Kilograms): number => load / kilogramsPerPound
