import type { CautionReference } from './caution-reference.ts'

/**
 * Every version of each customer caution that was ever issued, the present one last. The words of each version are kept
 * in the wording room: an answer names the version that was shown, and it must stay readable. A version is of all
 * languages: where the words of one change, those of the others may stay. CT-01: the warning stays
 * off. CT-02: a plain stem instead of a sensor. CT-03: little tread, or an old tire. CT-04: an unsafe tire. CT-05: the
 * other sensors are as old. CT-06: the torque check after some miles. CT-07: the proof drive is left to the customer.
 * CT-08: sealant in a tire. CT-09: wheels that are not the original ones. CT-10: pressures set while the tires are warm.
 * CT-11: the diagnosis is not complete. CT-12: a used part, or one the customer brought. CT-13: a wheel that is not
 * secure. CT-14: a tire that was driven low. CT-15: a temporary spare on the road. CT-16: a leak that is not repaired.
 * CT-17: a corroded valve stem that is not replaced. CT-18: a cracked or leaking one.
 */
export const customerCautionVersions = {
  'CT-01': [1, 2],
  'CT-02': [1],
  'CT-03': [1],
  'CT-04': [1],
  'CT-05': [1],
  'CT-06': [1, 2],
  'CT-07': [1, 2],
  'CT-08': [1, 2, 3],
  'CT-09': [1, 2, 3],
  'CT-10': [1],
  'CT-11': [1, 2],
  'CT-12': [1, 2, 3],
  'CT-13': [1],
  'CT-14': [1, 2],
  'CT-15': [1, 2],
  'CT-16': [1, 2, 3],
  'CT-17': [1, 2, 3],
  'CT-18': [1],
} as const satisfies Readonly<Record<string, readonly number[]>>

export type CustomerCautionVersions = typeof customerCautionVersions
export type CustomerCautionNumber = keyof CustomerCautionVersions

/** The present version of a customer caution, as an estimate and an answer name it. */
export const customerCaution = (number: CustomerCautionNumber): CautionReference => ({
  number,
  version: Math.max(...customerCautionVersions[number]),
})
