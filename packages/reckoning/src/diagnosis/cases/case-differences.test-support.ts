import type { Diagnosis } from '../diagnosis.ts'
import { diagnosisOf } from './diagnosed-cases.test-support.ts'
import { mustHold } from './must-hold.test-support.ts'
import type { WorkedCase } from './worked-cases.test-support.ts'

type Named = { readonly code: string; readonly wheels: readonly string[] }

const named = ({ code, wheels }: Named): string => (wheels.length > 0 ? `${code}@${wheels.join('+')}` : code)

/** In words, what a diagnosis says differently than its case expects; nothing where the case passes. */
export const differences = (one: WorkedCase, diagnosis: Diagnosis = diagnosisOf(one)): string[] => {
  const { name, evidence, expected, mustHold: remark } = one
  const found = diagnosis.findings.map(named)
  const wanted = expected.findings.map(named)
  const holds = mustHold[name]
  return [
    ...wanted.filter((each) => !found.includes(each)).map((each) => `expected ${each}, which was not found`),
    ...found.filter((each) => !wanted.includes(each)).map((each) => `found ${each}, which was not expected`),
    ...(diagnosis.primary === expected.primary
      ? []
      : [`found ${diagnosis.primary ?? 'nothing'} as the cause, expected ${expected.primary ?? 'nothing'}`]),
    ...(remark === null || holds?.(diagnosis, evidence) === true ? [] : [`does not hold: ${remark}`]),
  ]
}
