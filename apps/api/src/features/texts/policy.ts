/** The setting that reports and messages read the shop's words from. */
export const textsKind = 'report-head'
