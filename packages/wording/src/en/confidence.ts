import type { ConfidenceWording } from '../confidence.ts'

export const confidence: ConfidenceWording = {
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
