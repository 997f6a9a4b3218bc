import type { Diagnosis } from '@bayledger/reckoning/diagnosis/diagnosis'
import * as z from 'zod/mini'
import { EvidenceVersion1 } from './evidence-version-1.ts'

/**
 * `diagnosis.issued` in version 1, which held the words of a diagnosis beside its facts. Frozen by value: it names no
 * schema that may change.
 */
const FindingCode = z.enum([
  ...(['gauge-missing', 'light-not-witnessed', 'retry-silent-wheel', 'cross-read-suspected'] as const),
  ...(['placard-unverified', 'system-unknown', 'reading-impossible', 'reading-stale'] as const),
  ...(['run-low-damage-possible', 'sealant-inside', 'hot-corner', 'stem-leaking'] as const),
  ...(['tire-unsafe', 'wheel-not-secure', 'tire-low', 'cold-weather', 'weather-and-seepage'] as const),
  ...(['slow-loss-suspected', 'slow-leak', 'axle-pressures-exchanged'] as const),
  ...(['cold-morning-margin', 'altitude-change', 'spare-low', 'warm-tire-hides-low'] as const),
  ...(['over-inflated', 'no-warning-given', 'warning-unexplained', 'under-placard'] as const),
  ...(['set-then-reset', 'reset-only', 'wheel-speed-fault', 'no-monitoring-fitted'] as const),
  ...(['equal-loss-unseen', 'system-kind-contradicted', 'reset-and-recheck'] as const),
  ...(['sensor-silent', 'no-wheel-answers', 'sensor-battery-low', 'sensor-reads-wrong'] as const),
  ...(['sensors-refer-to-sea-level', 'gauge-suspect', 'sensor-temperature-impossible'] as const),
  ...(['frequency-wrong', 'protocol-wrong', 'sensor-does-not-follow', 'stem-corroded'] as const),
  ...(['set-of-four-worth-offering', 'sensor-asleep', 'no-sensor-on-arrival'] as const),
  ...(['temporary-spare-fitted', 'id-not-stored', 'stored-id-unheard', 'other-wheel-set'] as const),
  ...(['rotated-without-relearn', 'id-duplicated', 'wheel-from-another-vehicle'] as const),
  ...(['id-known-elsewhere', 'id-notation-differs', 'spare-rotated-without-relearn'] as const),
  ...(['malfunction-unexplained', 'receiver-fault', 'code-old-or-intermittent'] as const),
  ...(['control-module-blank', 'learn-mode-open', 'telltale-dark', 'collision-corner'] as const),
  ...(['not-driven-yet', 'one-place-only', 'interference-suspected', 'aftermarket-wheels'] as const),
  ...(['snow-or-chains', 'comeback', 'under-warranty', 'tire-old'] as const),
  ...(['sensors-near-usual-life', 'tread-low-soon', 'nothing-found-today'] as const),
])

const Reason = z.strictObject({
  field: z.string(),
  value: z.union([z.string(), z.number(), z.boolean(), z.null()]),
  unit: z.nullable(z.string()),
  says: z.string(),
})

const Finding = z.strictObject({
  code: FindingCode,
  wheels: z.array(z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])),
  confidence: z.enum(['firm', 'likely', 'possible']),
  kind: z.enum(['stop', 'cause', 'also', 'note', 'ask']),
  stop: z.optional(z.enum(['do-not-drive', 'do-not-open-the-tire', 'repair-before-release'])),
  because: z.array(Reason),
  next: z.string(),
  customer: z.string(),
  figures: z.record(
    z.string(),
    z.union([z.string(), z.number(), z.array(z.union([z.string(), z.number()]))]),
  ),
  offers: z.array(
    z.enum([
      ...(['sensor', 'set-of-four', 'service-kit', 'stem', 'tire', 'fastener-repair'] as const),
      ...(['reprogram', 'sensor-clean', 'relearn', 'reset', 'leak-find', 'pressure-set'] as const),
      ...(['outside-work'] as const),
    ]),
  ),
  holds: z.array(
    z.enum([
      ...(['wheel-removal', 'inflation', 'bead-break', 'pressure-setting', 'relearn', 'road'] as const),
      ...(['hand-back'] as const),
    ]),
  ),
})

const Contradiction = z.strictObject({
  code: z.enum([
    ...(['light-against-evidence', 'light-off-tire-low', 'light-on-tires-right'] as const),
    ...(['gauge-against-sensors', 'fault-not-flashed', 'lamp-dark-yet-lit'] as const),
    ...(['positions-exchanged', 'stray-sensors-heard', 'light-reported-otherwise'] as const),
    ...(['sheet-frequency-doubtful', 'sensor-older-than-reported'] as const),
  ]),
  says: z.string(),
  do: z.string(),
})

const NextCheck = z.strictObject({
  field: z.string(),
  ask: z.string(),
  couldChange: z.array(FindingCode),
  verdicts: z.int(),
  seconds: z.number(),
})

export const DiagnosisIssuedVersion1 = z.strictObject({
  evidence: EvidenceVersion1,
  diagnosis: z.strictObject({
    ruleSet: z.string(),
    primary: z.nullable(FindingCode),
    findings: z.array(Finding),
    contradictions: z.array(Contradiction),
    unchecked: z.array(z.string()),
    nextChecks: z.array(NextCheck),
  }),
  evidenceDigest: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
})
type Version1 = z.infer<typeof DiagnosisIssuedVersion1>

/** The same facts; what version 1 said only in words is kept as those words. */
export const diagnosisToVersion2 = ({ diagnosis, ...rest }: Version1) => ({
  ...rest,
  diagnosis: {
    ...diagnosis,
    findings: diagnosis.findings.map(({ next, customer, because, ...facts }) => ({
      ...facts,
      because: because.map(({ says, ...fact }) => ({
        ...fact,
        code: 'as-written' as const,
        values: { words: says },
      })),
      asWritten: { next, customer },
    })),
    contradictions: diagnosis.contradictions.map(({ code, ...asWritten }) => ({
      code,
      values: {},
      asWritten,
    })),
    nextChecks: diagnosis.nextChecks.map(({ ask, ...facts }) => ({ ...facts, asWritten: { ask } })),
  } satisfies Diagnosis,
})
