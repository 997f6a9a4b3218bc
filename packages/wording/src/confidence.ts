import type { Confidence } from '@bayledger/reckoning/diagnosis/diagnosis'

/** How sure a finding is: one word to print beside it, and one line that explains the word. */
export type ConfidenceWording = Readonly<
  Record<Confidence, { readonly word: string; readonly means: string }>
>
