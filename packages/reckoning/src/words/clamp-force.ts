/**
 * The caution that must be shown beside every clamp force.
 *
 * @source This program's own words.
 */
export const clampForceCaution =
  "An explanation of what a torque does, not a source of one. The same torque on the same stud clamps up to 30 % more or less. The vehicle maker's figure governs."
