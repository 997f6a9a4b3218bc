import { evidenceOf } from '@bayledger/ledger/questions/evidence-of'
import type { OrderState } from '@bayledger/ledger/state'
import type { Diagnosis, Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Evidence, HistoryEvidence } from '@bayledger/reckoning/evidence/evidence'
import { useQuery } from '@tanstack/react-query'
import { useMemo } from 'react'

export type ComputedFindings = { readonly evidence: Evidence; readonly diagnosis: Diagnosis }

/** The rules are fetched once, soon after the tablet is open, and stay: no network is needed to compute findings. */
export const rulesQuery = {
  queryKey: ['rules'],
  queryFn: async () => {
    const { diagnose, findingsOf } = await import('@bayledger/reckoning/diagnosis/diagnose')
    return { diagnose, findingsOf }
  },
  staleTime: Number.POSITIVE_INFINITY,
}

/** What the readings so far say, computed on this tablet by the rules that the server computes it by again. */
export const useDiagnosis = (state: OrderState, history: HistoryEvidence | null): ComputedFindings | null => {
  const rules = useQuery(rulesQuery).data
  return useMemo(() => {
    if (rules === undefined || state.sheet === null) return null
    const evidence = evidenceOf(state, history)
    return { evidence, diagnosis: rules.diagnose(evidence) }
  }, [rules, state, history])
}

/** The findings alone, which every reading may change; none where those that were issued still hold. */
export const useFindings = (state: OrderState, history: HistoryEvidence | null): readonly Finding[] => {
  const rules = useQuery(rulesQuery).data
  return useMemo(() => {
    const isIssued = state.diagnosis !== null && !state.diagnosis.outdated
    return rules === undefined || state.sheet === null || isIssued
      ? []
      : rules.findingsOf(evidenceOf(state, history))
  }, [rules, state, history])
}
