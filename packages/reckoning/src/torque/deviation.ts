import type { NewtonMeters } from '../units/measured.ts'

/**
 * How far a torque wrench is off: what it was set to, compared with what the test device measured.
 *
 * @formula (set − measured) / measured.
 * @units A share: 0.04 is 4 %. Above zero the wrench gives less than it is set to.
 * @limits `measured` above 0.
 * @source ISO 6789-1:2017, read in a tool maker's summary: "of the indication on the test device".
 */
export const wrenchDeviation = (set: NewtonMeters, measured: NewtonMeters): number =>
  (set - measured) / measured

/**
 * Whether a measured torque is near enough to what a wrench was set to. One that is not is quarantined, and the
 * wheels torqued with it since its last good check are looked at again.
 *
 * @formula |deviation| at most 4 % where the wrench goes above 10 N·m, at most 6 % where it ends at 10 N·m or under.
 * @units N·m.
 * @source ISO 6789-1:2017, setting tools (type II, class A), read in a tool maker's summary.
 */
export const isWithinDeviation = (
  set: NewtonMeters,
  measured: NewtonMeters,
  wrenchMaximum: NewtonMeters,
): boolean => Math.abs(wrenchDeviation(set, measured)) <= (wrenchMaximum > 10 ? 0.04 : 0.06) + rounding

/** The tolerance for a quotient that should be exactly on the limit. */
const rounding = 1e-9
