import type { DriveVerdict, FixedVerdict } from '@bayledger/ledger/questions/verdicts'

/** The verdicts on the whole vehicle: may it be driven, and is it fixed and how do we know. */
export type VerdictsWording = {
  readonly drive: Readonly<Record<DriveVerdict, string>>
  /** Before the technician has confirmed what was found. */
  readonly driveNotYetKnown: string
  readonly fixed: Readonly<Record<FixedVerdict['verdict'], string>>
  /** The reason for the verdict, without a capital or a period, so that it can follow a colon. */
  readonly because: (verdict: FixedVerdict) => string
}

/** "Not yet proven" and "drive 20 minutes to be sure; a warning may take that long to come". */
export const fixedWords = (
  words: VerdictsWording,
  verdict: FixedVerdict,
): { readonly word: string; readonly words: string } => ({
  word: words.fixed[verdict.verdict],
  words: words.because(verdict),
})

/** "Proven: the light was off at the end of 22 minutes of driving." */
export const fixedSentence = (words: VerdictsWording, verdict: FixedVerdict): string =>
  `${words.fixed[verdict.verdict]}: ${words.because(verdict)}.`
