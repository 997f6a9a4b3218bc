/** Whether a fact is known to be true, known to be false, or not known. */
export type Known = 'yes' | 'no' | 'not-known'
