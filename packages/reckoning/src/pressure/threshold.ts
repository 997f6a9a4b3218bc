import type { GaugeKilopascals, KilopascalsApart } from '../units/measured.ts'

/** A gauge pressure is compared with a gauge pressure, a difference with a difference. */
type Comparable = GaugeKilopascals | KilopascalsApart

/** 0.005 psi in kPa: half the last digit that a shop gauge shows; nearer than that is on the threshold. */
const pressureTolerance = 0.0345

/**
 * Whether a pressure is at or under a threshold; within 0.005 psi of it is on it.
 *
 * @units kPa, both gauge or both differences
 * @source 49 CFR 571.138 S4.2(a), "equal to or less than" (read); the 0.005 psi are this program's own rule
 */
export const atOrBelow = <Kind extends Comparable>(pressure: Kind, threshold: Kind): boolean =>
  pressure <= threshold + pressureTolerance

/**
 * Whether a pressure is at or over a threshold; within 0.005 psi of it is on it.
 *
 * @units kPa, both gauge or both differences
 * @source this program's own rule
 */
export const atOrAbove = <Kind extends Comparable>(pressure: Kind, threshold: Kind): boolean =>
  pressure >= threshold - pressureTolerance

/**
 * Whether a pressure is under a threshold and not on it.
 *
 * @units kPa, both gauge or both differences
 * @source this program's own rule
 */
export const below = <Kind extends Comparable>(pressure: Kind, threshold: Kind): boolean =>
  !atOrAbove(pressure, threshold)

/**
 * Whether a pressure is over a threshold and not on it.
 *
 * @units kPa, both gauge or both differences
 * @source this program's own rule
 */
export const above = <Kind extends Comparable>(pressure: Kind, threshold: Kind): boolean =>
  !atOrBelow(pressure, threshold)
