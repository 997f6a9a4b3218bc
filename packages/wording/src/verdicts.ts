import type { DriveVerdict, FixedVerdict } from '@bayledger/ledger/questions/verdicts'

/** What is said of a vehicle as a whole: may it be driven, and is it fixed and how do we know. */
export type VerdictsWording = {
  readonly drive: Readonly<Record<DriveVerdict, string>>
  readonly fixed: Readonly<Record<FixedVerdict['verdict'], string>>
  /** Why the verdict is what it is: without a capital and without a period, to follow it after a colon. */
  readonly because: (verdict: FixedVerdict) => string
}

/** "Not yet proven" and "not driven yet; a warning may take 20 minutes to come". */
export const fixedWords = (
  words: VerdictsWording,
  verdict: FixedVerdict,
): { readonly word: string; readonly words: string } => ({
  word: words.fixed[verdict.verdict],
  words: words.because(verdict),
})

/** "Proven: the light stayed off for 22 minutes." */
export const fixedSentence = (words: VerdictsWording, verdict: FixedVerdict): string =>
  `${words.fixed[verdict.verdict]}: ${words.because(verdict)}.`
