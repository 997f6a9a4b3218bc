/** 0.005 psi in kPa: half the last digit that a shop gauge shows; nearer than that is on the threshold. */
const pressureTolerance = 0.0345

/** Whether a pressure in kPa is at or under a threshold in kPa. */
export const atOrBelow = (kilopascals: number, threshold: number): boolean =>
  kilopascals <= threshold + pressureTolerance

/** Whether a pressure in kPa is at or over a threshold in kPa. */
export const atOrAbove = (kilopascals: number, threshold: number): boolean =>
  kilopascals >= threshold - pressureTolerance

/** Whether a pressure in kPa is under a threshold in kPa and not on it. */
export const below = (kilopascals: number, threshold: number): boolean => !atOrAbove(kilopascals, threshold)

/** Whether a pressure in kPa is over a threshold in kPa and not on it. */
export const above = (kilopascals: number, threshold: number): boolean => !atOrBelow(kilopascals, threshold)
