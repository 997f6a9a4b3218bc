import type { FigureWorth } from '@bayledger/reckoning/sheet'

/** What a figure is worth, wherever it is used: on screens and on paper. */
export const figureWorthWords: Readonly<Record<FigureWorth, string>> = {
  verified: 'verified by a second person',
  entered: 'entered, not verified',
  label: 'read off the label, not verified',
  memory: 'from memory, not verified',
  missing: 'not entered yet',
}
