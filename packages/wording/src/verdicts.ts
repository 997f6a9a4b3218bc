import type { DriveVerdict, FixedVerdict } from '@bayledger/ledger/questions/verdicts'

/** The verdicts on the whole vehicle: may it be driven, and is it fixed and how do we know. */
export type VerdictsWording = {
  readonly drive: Readonly<Record<DriveVerdict, string>>
  readonly fixed: Readonly<Record<FixedVerdict['verdict'], string>>
  /** The reason for the verdict, without a capital or a period, so that it can follow a colon. */
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
