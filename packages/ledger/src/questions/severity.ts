import type { Finding, FindingCode, Stop } from '@bayledger/reckoning/diagnosis/diagnosis'

/**
 * How much a finding weighs, decided once for the desk, the bay, the telephone and the report. `not-checked`: a fact is
 * asked for before anyone may judge. `unexplained`: the light has a reason that the facts do not name yet.
 */
export type FindingSeverity =
  | Stop
  | 'cause'
  | 'also-found'
  | 'unexplained'
  | 'not-checked'
  | 'for-information'

/** The light's own findings, where it must be asked further before there is a cause. */
const unexplained: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'warning-unexplained',
  'malfunction-unexplained',
  'system-kind-contradicted',
])

/** Only the primary finding is the cause, and what must be asked first is never called the cause. */
export const severityOf = (
  finding: Pick<Finding, 'code' | 'kind' | 'stop'>,
  primary: string | null,
): FindingSeverity => {
  switch (finding.kind) {
    case 'stop':
      return finding.stop ?? 'do-not-drive'
    case 'ask':
      return unexplained.has(finding.code) ? 'unexplained' : 'not-checked'
    case 'note':
      return finding.code === primary ? 'cause' : 'for-information'
    default:
      return finding.code === primary ? 'cause' : 'also-found'
  }
}

/** In the order in which findings are read. */
const order: readonly FindingSeverity[] = [
  'do-not-drive',
  'do-not-open-the-tire',
  'repair-before-release',
  'cause',
  'also-found',
  'unexplained',
  'not-checked',
  'for-information',
]

/**
 * Stops, what explains the light (also where it must be asked first), what else was found, what is not explained or
 * checked, and what is for information; within each as the rules put them.
 */
export const inOrderOfReading = <One extends Pick<Finding, 'code' | 'kind' | 'stop'>>(
  findings: readonly One[],
  primary: string | null,
): One[] => {
  const placeOf = (finding: One): number => {
    if (finding.kind === 'stop') return 0
    return order.indexOf(finding.code === primary ? 'cause' : severityOf(finding, primary))
  }
  return findings.toSorted((one, other) => placeOf(one) - placeOf(other))
}
