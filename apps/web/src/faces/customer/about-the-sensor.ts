import type { FindingCode } from '@bayledger/reckoning/diagnosis/finding-codes'

/** Findings about the small sender in a wheel, and not about its tire or its air. */
const ofTheSensor: ReadonlySet<string> = new Set<FindingCode>([
  'sensor-silent',
  'no-wheel-answers',
  'sensor-battery-low',
  'sensor-reads-wrong',
  'sensors-refer-to-sea-level',
  'sensor-temperature-impossible',
  'frequency-wrong',
  'protocol-wrong',
  'sensor-does-not-follow',
  'sensor-asleep',
  'no-sensor-on-arrival',
  'set-of-four-worth-offering',
  'id-not-stored',
  'stored-id-unheard',
  'other-wheel-set',
  'rotated-without-relearn',
  'id-duplicated',
  'wheel-from-another-vehicle',
  'id-known-elsewhere',
  'id-notation-differs',
  'spare-rotated-without-relearn',
  'code-old-or-intermittent',
])

/** Whether a cause is marked as the sensor's: beside a pressure, "Cause" alone reads as a bad tire. */
export const isAboutTheSensor = (code: string): boolean => ofTheSensor.has(code)
