import type {
  Contradiction,
  Diagnosis,
  Finding,
  NextCheck,
  Reason,
} from '@bayledger/reckoning/diagnosis/diagnosis'
import { type ChecksWording, checkWords } from './checks.ts'
import type { ContradictionsWording } from './contradictions.ts'
import { customerSentence } from './customer-sentence.ts'
import type { FindingActions, FindingSentences } from './findings.ts'
import { type ReasonsWording, reasonWords } from './reasons.ts'
import type { WheelsWording } from './wheels.ts'

/** A diagnosis as people and other programs read it: the facts, and the words for each. */
export type WordedDiagnosis = Omit<Diagnosis, 'findings' | 'contradictions' | 'nextChecks'> & {
  readonly findings: WordedFinding[]
  readonly contradictions: WordedContradiction[]
  readonly nextChecks: (Omit<NextCheck, 'asWritten'> & { readonly ask: string })[]
}

export type WordedReason = Omit<Reason, 'code' | 'values'> & { readonly says: string }

export type WordedFinding = Omit<Finding, 'because' | 'asWritten'> & {
  readonly because: WordedReason[]
  readonly next: string
  readonly customer: string
}

export type WordedContradiction = Pick<Contradiction, 'code'> & { readonly says: string; readonly do: string }

type ReasonWords = { readonly reasons: ReasonsWording; readonly wheels: WheelsWording }
type SentenceWords = { readonly findingSentences: FindingSentences; readonly wheels: WheelsWording }
type CheckWords = { readonly checks: ChecksWording; readonly wheels: WheelsWording }

export type DiagnosisWords = ReasonWords &
  SentenceWords &
  CheckWords & {
    readonly findingActions: FindingActions
    readonly contradictions: ContradictionsWording
  }

/** The whole diagnosis with its words. */
export const wordedDiagnosis = (words: DiagnosisWords, diagnosis: Diagnosis): WordedDiagnosis => ({
  ruleSet: diagnosis.ruleSet,
  primary: diagnosis.primary,
  findings: diagnosis.findings.map((finding) => wordedFinding(words, finding)),
  contradictions: diagnosis.contradictions.map((one) => wordedContradiction(words, one)),
  unchecked: diagnosis.unchecked,
  nextChecks: diagnosis.nextChecks.map(({ field, couldChange, verdicts, seconds, asWritten }) => ({
    field,
    ask: askFor(words, { field, asWritten }),
    couldChange,
    verdicts,
    seconds,
  })),
})

const wordedFinding = (words: DiagnosisWords, finding: Finding): WordedFinding => {
  const { code, wheels, confidence, kind, stop, because, figures, offers, holds } = finding
  return {
    code,
    wheels,
    confidence,
    kind,
    ...(stop === undefined ? {} : { stop }),
    because: because.map((reason) => wordedReason(words, reason)),
    next: nextAction(words, finding),
    customer: sentenceFor(words, finding),
    figures,
    offers,
    holds,
  }
}

/** A reason with what its value shows, in words. */
export const wordedReason = (words: ReasonWords, reason: Reason): WordedReason => ({
  field: reason.field,
  value: reason.value,
  unit: reason.unit,
  says: reasonWords(words, reason),
})

/** What the shop does next about a finding. */
export const nextAction = (
  { findingActions }: { readonly findingActions: FindingActions },
  { code, asWritten }: Finding,
): string => asWritten?.next ?? findingActions[code]

/** What the customer reads of a finding. */
export const sentenceFor = (words: SentenceWords, { code, figures, asWritten }: Finding): string =>
  asWritten?.customer ?? customerSentence(words, code, figures)

/** What a contradiction says, and what to do about it. */
export const wordedContradiction = (
  { contradictions }: { readonly contradictions: ContradictionsWording },
  { code, values, asWritten }: Contradiction,
): WordedContradiction => {
  const { says, do: action } = asWritten ?? contradictions[code](values)
  return { code, says, do: action }
}

/** What to do to get a fact that is worth checking next. */
export const askFor = (
  words: CheckWords,
  { field, asWritten }: Pick<NextCheck, 'field' | 'asWritten'>,
): string => asWritten?.ask ?? checkWords(words, field)
