import { describe } from 'vitest'

/** What this program or the shop has settled for itself: it is held, but it proves nothing and is not counted. */
export const ownConvention = 'our convention, not counted'

/** How the value came to us. A fact of the trade that nobody has published is common practice, with no source. */
export type Certainty =
  | 'read'
  | 'quoted'
  | 'from memory'
  | 'computed from definition'
  | 'common practice, no source'
  | typeof ownConvention

/** Something outside this project that a file of checks holds our computations against. */
export type Source = {
  readonly document: string
  readonly section?: string
  readonly edition?: string
  readonly certainty: Certainty
}

/** The line by which a source is known, in the tests and in what `npm run -s check:published` prints. */
export const sourceLine = ({ document, section, edition, certainty }: Source): string =>
  `${[document, section, edition].filter((part) => part !== undefined).join(', ')} [${certainty}]`

/** The checks against one source; each file of this folder calls it once, and each test in it is one check. */
export const published = (source: Source, checks: () => void): void => {
  describe(sourceLine(source), checks)
}
