/** What staff read where today's rules judge stored evidence otherwise than the findings that were issued. Nothing stores it. */
export const differenceWords = {
  cause: (then: string, now: string) => `The cause was ${then}; today it is ${now}.`,
  noCause: 'not named',
  titled: (title: string) => `“${title}”`,
  onlyThen: (finding: string) => `No longer found today: ${finding}.`,
  onlyNow: (finding: string) => `Found today only: ${finding}.`,
  contradictionOnlyThen: (says: string) => `No longer a contradiction today: ${says}`,
  contradictionOnlyNow: (says: string) => `A contradiction today only: ${says}`,
  unchecked: 'What counts as not checked differs.',
  nextChecks: 'What is worth checking next differs.',
  noWheel: 'no wheel',
  none: 'none',
  changed: (title: string, what: string, then: string, now: string) =>
    `${title}, ${what}: was ${then}; today ${now}.`,
  reasons: (title: string) => `${title}: the reasons differ, what follows does not.`,
} as const
