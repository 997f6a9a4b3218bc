import type { Evidence } from '../../evidence/evidence-schema.ts'
import { contradictionsOf } from '../contradictions.ts'
import { diagnose, ruleSetVersion } from '../diagnose.ts'
import type { Diagnosis } from '../diagnosis.ts'
import { judge } from '../engine/judge.ts'
import { findingOf } from '../finding-of.ts'
import type { WorkedCase } from './worked-cases.test-support.ts'

const known = new Map<string, Diagnosis>()

/** The diagnosis of a worked case, made once: several tests look at it. */
export const diagnosisOf = ({ name, evidence }: WorkedCase): Diagnosis => {
  const made = known.get(name) ?? diagnose(evidence)
  known.set(name, made)
  return made
}

/** The diagnosis without what to check next, which takes longest. */
export const diagnosedSoFar = (evidence: Evidence): Diagnosis => {
  const judgment = judge(evidence)
  return {
    ruleSet: ruleSetVersion,
    primary: judgment.primary,
    findings: judgment.judged.map((judged) => findingOf(judgment, judged)),
    contradictions: contradictionsOf(judgment),
    unchecked: [],
    nextChecks: [],
  }
}
