import type { FigureWorth } from '@bayledger/reckoning/sheet'

/** What a figure is worth, wherever it is used: on screens and on paper. */
export const figureWorthWords: Readonly<Record<FigureWorth, string>> = {
  verified: 'verified by a second person',
  entered: 'entered, not verified',
  label: 'read off the label, not verified',
  memory: 'from memory, not verified',
  missing: 'not entered yet',
}

/** Where a second person read the same figure for this very vehicle. */
export const confirmedWords = (reference: string): string => `confirmed on this vehicle: ${reference}`

/** "verified by a second person; confirmed on this vehicle: door label" */
export const figureStandingWords = ({
  worth,
  confirmed,
}: {
  readonly worth: FigureWorth
  readonly confirmed: string | null
}): string => [figureWorthWords[worth], ...(confirmed === null ? [] : [confirmedWords(confirmed)])].join('; ')
