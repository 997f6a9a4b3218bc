import { diagnose } from '../diagnose.ts'
import type { Diagnosis } from '../diagnosis.ts'
import { mustHold } from './must-hold.test-support.ts'
import type { WorkedCase } from './worked-cases.test-support.ts'

type Named = { readonly code: string; readonly wheels: readonly string[] }

const named = ({ code, wheels }: Named): string => (wheels.length > 0 ? `${code}@${wheels.join('+')}` : code)

/** In words, what a diagnosis says differently than its case expects; nothing where the case passes. */
export const differences = (
  { name, evidence, expected, mustHold: remark }: WorkedCase,
  diagnosis: Diagnosis = diagnose(evidence),
): string[] => {
  const found = diagnosis.findings.map(named)
  const wanted = expected.findings.map(named)
  const holds = mustHold[name]
  return [
    ...wanted.filter((one) => !found.includes(one)).map((one) => `expected ${one}, which was not found`),
    ...found.filter((one) => !wanted.includes(one)).map((one) => `found ${one}, which was not expected`),
    ...(diagnosis.primary === expected.primary
      ? []
      : [`found ${diagnosis.primary ?? 'nothing'} as the cause, expected ${expected.primary ?? 'nothing'}`]),
    ...(remark === null || holds?.(diagnosis, evidence) === true ? [] : [`does not hold: ${remark}`]),
  ]
}
