import type { Finding } from '@bayledger/reckoning/diagnosis/diagnosis'
import type { Severity } from '../content.ts'

/** Findings that need another fact first: they print as not checked. */
const asksForFact: ReadonlySet<string> = new Set([
  'gauge-missing',
  'light-not-witnessed',
  'retry-silent-wheel',
  'cross-read-suspected',
  'placard-unverified',
  'system-unknown',
  'reading-impossible',
  'reading-stale',
])

/** The word and shape of a finding; only the primary one is called the cause. */
export const severityOf = (finding: Finding, primary: string | null): Severity => {
  if (finding.kind === 'stop') return finding.stop ?? 'do-not-drive'
  if (asksForFact.has(finding.code)) return 'not-checked'
  if (finding.code === primary && finding.kind !== 'ask') return 'cause'
  if (finding.kind === 'cause' || finding.kind === 'also') return 'also-found'
  return 'for-information'
}
