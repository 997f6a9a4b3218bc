import type { Finding, FindingCode, Stop } from '@bayledger/reckoning/diagnosis/diagnosis'

/**
 * How much a finding weighs, decided once for the desk, the bay, the telephone and the report. `not-checked`: a fact
 * is needed before anyone may judge. `unexplained`: the facts do not show yet why the light is on.
 */
export type FindingSeverity =
  | Stop
  | 'cause'
  | 'also-found'
  | 'unexplained'
  | 'not-checked'
  | 'for-information'

/** The findings about the light itself, where more must be checked before there is a cause. */
const unexplained: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'warning-unexplained',
  'malfunction-unexplained',
  'system-kind-contradicted',
])

/** Only the primary finding is the cause. A finding that needs another fact first is never called the cause. */
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

/** The order in which people read findings. */
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
 * Sorts findings: stops, what explains the light (even if more must be checked first), what else was found, what is not
 * explained or checked, and what is for information; within each, in the order of the rules.
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
