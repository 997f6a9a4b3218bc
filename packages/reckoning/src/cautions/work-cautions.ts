/**
 * Cautions of the bay by number, with every version that was ever issued. They are the usual ones of the trade; the
 * vehicle maker's instructions, the machine maker's, local codes and the shop's own training govern. A step says which
 * caution it carries, in which version; the words are the wording room's.
 */
export const issuedWorkCautions = {
  'CW-01': [1, 2],
  'CW-02': [1],
  'CW-03': [1, 2],
  'CW-04': [1],
  'CW-05': [1],
  'CW-06': [1],
  'CW-07': [1],
  'CW-08': [1],
  'CW-09': [1],
  'CW-10': [1],
  'CW-11': [1],
  'CW-12': [1],
  'CW-13': [1],
  'CW-14': [1],
  'CW-15': [1],
} as const

export type WorkCautionNumber = keyof typeof issuedWorkCautions

export const workCautionNumbers = Object.keys(issuedWorkCautions) as readonly WorkCautionNumber[]

export type WorkCaution = { readonly number: WorkCautionNumber; readonly version: number }

/** The cautions that plans carry now, by what they are about. */
export const workCautions = {
  lift: { number: 'CW-01', version: 2 },
  open: { number: 'CW-02', version: 1 },
  seat: { number: 'CW-03', version: 2 },
  torque: { number: 'CW-04', version: 1 },
  stem: { number: 'CW-05', version: 1 },
  pressure: { number: 'CW-06', version: 1 },
  road: { number: 'CW-07', version: 1 },
  torqueAgain: { number: 'CW-08', version: 1 },
  repair: { number: 'CW-09', version: 1 },
  lower: { number: 'CW-10', version: 1 },
  purge: { number: 'CW-11', version: 1 },
  runLow: { number: 'CW-12', version: 1 },
  restraint: { number: 'CW-13', version: 1 },
  inflate: { number: 'CW-14', version: 1 },
  spare: { number: 'CW-15', version: 1 },
} as const satisfies Record<string, WorkCaution>

export type WorkCautionName = keyof typeof workCautions
