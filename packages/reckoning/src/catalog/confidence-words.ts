import type { Confidence } from '../diagnosis/diagnosis.ts'

/** How sure a finding is: one word to print beside it, and one line that says what the word promises. */
export const confidenceWords: Readonly<
  Record<Confidence, { readonly word: string; readonly means: string }>
> = {
  firm: { word: 'Firm', means: 'Measured or seen here; what was recorded shows it.' },
  likely: {
    word: 'Likely',
    means: 'The readings point to it; confirm it before a part is fitted or work rests on it.',
  },
  possible: {
    word: 'Possible',
    means: 'It may be so; nothing here proves it yet. Look further before any work.',
  },
}
