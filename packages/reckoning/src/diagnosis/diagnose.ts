import type { Evidence } from '../evidence/evidence-schema.ts'
import { nextChecksOf } from './checks/next-checks.ts'
import { uncheckedFacts } from './checks/unchecked.ts'
import { contradictionsOf } from './contradictions.ts'
import type { Diagnosis, Finding } from './diagnosis.ts'
import { judge } from './engine/judge.ts'
import { findingOf } from './finding-of.ts'

/** Raise it whenever the same evidence leads to other facts, not for new words. Old orders keep the number they were issued under. */
export const ruleSetVersion = '4'

/** The findings of `diagnose` alone. What to check next takes some twenty times as long. */
export const findingsOf = (evidence: Evidence): Finding[] => {
  const judgment = judge(evidence)
  return judgment.judged.map((judged) => findingOf(judgment, judged))
}

/**
 * What the evidence says: findings with their reasons, which of them explains the light, what contradicts what, what
 * was not checked and what to check next. Pure: the same evidence always gives the same diagnosis.
 */
export const diagnose = (evidence: Evidence): Diagnosis => {
  const judgment = judge(evidence)
  const unchecked = uncheckedFacts(judgment.facts)
  return {
    ruleSet: ruleSetVersion,
    primary: judgment.primary,
    findings: judgment.judged.map((judged) => findingOf(judgment, judged)),
    contradictions: contradictionsOf(judgment),
    unchecked: unchecked.map(({ field }) => field),
    nextChecks: nextChecksOf(judgment, unchecked),
  }
}
