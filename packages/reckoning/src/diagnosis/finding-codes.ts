import * as z from 'zod/mini'

/** The names of all findings, by group and within a group in the order in which they are put out. */
export const codesByGroup = {
  ask: [
    'gauge-missing',
    'light-not-witnessed',
    'retry-silent-wheel',
    'cross-read-suspected',
    'placard-unverified',
    'system-unknown',
    'reading-impossible',
    'reading-stale',
  ],
  stop: [
    'run-low-damage-possible',
    'sealant-inside',
    'hot-corner',
    'stem-leaking',
    'tire-unsafe',
    'wheel-not-secure',
    'puncture-not-repairable',
  ],
  pressure: [
    'tire-low',
    'cold-weather',
    'weather-and-seepage',
    'slow-loss-suspected',
    'slow-leak',
    'axle-pressures-exchanged',
    'cold-morning-margin',
    'altitude-change',
    'spare-low',
    'warm-tire-hides-low',
    'over-inflated',
    'no-warning-given',
    'warning-unexplained',
    'under-placard',
    'puncture-found',
    'spare-under-label',
  ],
  system: [
    'set-then-reset',
    'reset-only',
    'wheel-speed-fault',
    'no-monitoring-fitted',
    'equal-loss-unseen',
    'system-kind-contradicted',
    'reset-and-recheck',
  ],
  sensor: [
    'sensor-silent',
    'no-wheel-answers',
    'sensor-battery-low',
    'sensor-reads-wrong',
    'sensors-refer-to-sea-level',
    'gauge-suspect',
    'sensor-temperature-impossible',
    'frequency-wrong',
    'protocol-wrong',
    'sensor-does-not-follow',
    'stem-corroded',
    'set-of-four-worth-offering',
    'sensor-asleep',
    'no-sensor-on-arrival',
    'temporary-spare-fitted',
  ],
  identity: [
    'id-not-stored',
    'stored-id-unheard',
    'other-wheel-set',
    'rotated-without-relearn',
    'id-duplicated',
    'wheel-from-another-vehicle',
    'id-known-elsewhere',
    'id-notation-differs',
    'spare-rotated-without-relearn',
  ],
  vehicle: [
    'malfunction-unexplained',
    'receiver-fault',
    'code-old-or-intermittent',
    'control-module-blank',
    'learn-mode-open',
    'telltale-dark',
    'collision-corner',
    'not-driven-yet',
  ],
  surroundings: ['one-place-only', 'interference-suspected', 'aftermarket-wheels', 'snow-or-chains'],
  history: ['comeback', 'under-warranty'],
  advice: ['tire-old', 'sensors-near-usual-life', 'tread-low-soon', 'nothing-found-today'],
} as const

export type FindingGroup = keyof typeof codesByGroup

export const FindingCode = z.enum([
  ...codesByGroup.ask,
  ...codesByGroup.stop,
  ...codesByGroup.pressure,
  ...codesByGroup.system,
  ...codesByGroup.sensor,
  ...codesByGroup.identity,
  ...codesByGroup.vehicle,
  ...codesByGroup.surroundings,
  ...codesByGroup.history,
  ...codesByGroup.advice,
])
export type FindingCode = z.infer<typeof FindingCode>

const groups = new Map<FindingCode, FindingGroup>(
  (Object.entries(codesByGroup) as [FindingGroup, readonly FindingCode[]][]).flatMap(([group, codes]) =>
    codes.map((code) => [code, group] as const),
  ),
)

export const groupOf = (code: FindingCode): FindingGroup => {
  const group = groups.get(code)
  if (group === undefined) throw new Error(`no group holds the finding ${code}`)
  return group
}
