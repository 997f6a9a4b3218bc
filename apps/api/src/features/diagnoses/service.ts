import type { RulesComparison } from '@bayledger/contract/diagnoses'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import { type ParsedEvidence, parseEvidence } from '@bayledger/reckoning/evidence/evidence'
import { readEvidence } from '@bayledger/reckoning/evidence/read-evidence'
import { english } from '@bayledger/wording/en/english'
import { type WordedDiagnosis, wordedDiagnosis } from '@bayledger/wording/worded-diagnosis'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { getLedger } from '../orders/service.ts'
import { differencesBetween } from './service/compare-diagnoses.ts'

/** Findings for evidence as it came, unread; every fault of it is named at once. */
export const computeDiagnosis = (bytes: Uint8Array | null): WordedDiagnosis =>
  wordedDiagnosis(english, diagnosisOf(readEvidence(bytes)))

const diagnosisOf = (read: ParsedEvidence): Diagnosis => {
  if (read.ok) return diagnose(read.evidence)
  const fields = [...read.faults]
  throw new AppError({ code: 'EVIDENCE_INVALID', count: fields.length }, { fields })
}

/**
 * An order's findings stay as the rules of their day made them. This judges the same stored evidence by today's
 * rules, for whoever wants to know; `null` where no findings were issued.
 */
export const compareWithTodaysRules = async (
  deps: Deps,
  orderId: string,
): Promise<RulesComparison | null> => {
  const { state } = await getLedger(deps, orderId)
  if (!state.diagnosis) return null
  const { evidence, diagnosis } = state.diagnosis
  const today = diagnosisOf(parseEvidence(evidence))
  return {
    issuedByRuleSet: diagnosis.ruleSet,
    todaysRuleSet: today.ruleSet,
    differences: differencesBetween(diagnosis, today),
    today: wordedDiagnosis(english, today),
  }
}
