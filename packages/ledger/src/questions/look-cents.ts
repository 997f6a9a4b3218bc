/** When the inspection is charged, and how much it is, in cents with tax. */
export type LookTerms = {
  readonly terms: 'charged' | 'waived-with-work' | 'waived'
  readonly cents: number
}

/** Whether the inspection is charged by its terms, where the customer wants work or none. */
export const isLookCharged = (terms: LookTerms['terms'], wantsWork: boolean): boolean =>
  terms === 'charged' || (terms === 'waived-with-work' && !wantsWork)

/** What of it is owed, cents, where the customer wants work or none. */
export const lookCentsWith = ({ terms, cents }: LookTerms, wantsWork: boolean): number =>
  isLookCharged(terms, wantsWork) ? cents : 0
