/** What a fact is worth: known to be so, known not to be so, or not known. */
export type Known = 'yes' | 'no' | 'not-known'
