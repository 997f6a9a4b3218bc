/** When the inspection is charged, and how much it is, in cents with tax. */
export type LookTerms = {
  readonly terms: 'charged' | 'waived-with-work' | 'waived'
  readonly cents: number
}

/** What of it is owed, cents, where the customer wants work or none. */
export const lookCentsWith = ({ terms, cents }: LookTerms, wantsWork: boolean): number =>
  terms === 'charged' || (terms === 'waived-with-work' && !wantsWork) ? cents : 0
