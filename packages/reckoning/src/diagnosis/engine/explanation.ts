import type { LightBehavior } from '../../evidence/evidence-schema.ts'
import { predictedOvernight } from '../facts/cold-group.ts'
import type { Facts } from '../facts/facts.ts'
import { keepsLampLit } from '../facts/lamp-threshold.ts'
import type { FindingCode } from '../finding-codes.ts'
import type { PriorFindings } from '../rule.ts'
import { pressureFields } from '../rules/pressure-words.ts'

/** What can explain the light that was seen, the likeliest first. */
export const explains: Readonly<Record<LightBehavior, readonly FindingCode[]>> = {
  off: ['telltale-dark'],
  solid: [
    'tire-low',
    'altitude-change',
    'cold-weather',
    'weather-and-seepage',
    'spare-low',
    'set-then-reset',
    'reset-only',
    'reset-and-recheck',
    'sensor-reads-wrong',
    'sensor-does-not-follow',
    'temporary-spare-fitted',
    'not-driven-yet',
  ],
  'flash-then-solid': [
    'sensor-silent',
    'no-wheel-answers',
    'frequency-wrong',
    'sensor-asleep',
    'protocol-wrong',
    'no-sensor-on-arrival',
    'temporary-spare-fitted',
    'sensor-does-not-follow',
    'sensor-battery-low',
    'other-wheel-set',
    'id-duplicated',
    'wheel-from-another-vehicle',
    'id-not-stored',
    'spare-rotated-without-relearn',
    'control-module-blank',
    'receiver-fault',
    'code-old-or-intermittent',
    'stored-id-unheard',
    'not-driven-yet',
    'wheel-speed-fault',
  ],
  'intermittent-cold': [
    'cold-morning-margin',
    'cold-weather',
    'weather-and-seepage',
    'sensor-battery-low',
    'sensor-silent',
    'code-old-or-intermittent',
  ],
  'intermittent-other': [
    'one-place-only',
    'interference-suspected',
    'snow-or-chains',
    'sensor-battery-low',
    'code-old-or-intermittent',
  ],
  'flash-continuous': ['learn-mode-open'],
}

/** Findings that apply only when nothing explains the light; then they are named instead of a cause. */
const lastResort = [
  'malfunction-unexplained',
  'warning-unexplained',
] as const satisfies readonly FindingCode[]

/** The fields that decide whether a finding is able to explain the light, beside those behind the finding itself. */
export const readByExplanation: readonly string[] = [
  ...pressureFields,
  'light.behavior',
  'wheels.*.sensorPressure',
  'surroundings.overnightLow',
]

/** The finding that explains the observed light; null where none does. */
export const explanationOf = (
  facts: Facts,
  prior: Pick<PriorFindings, 'has' | 'wheelsOf'>,
): FindingCode | null => {
  if (facts.behavior === null || facts.system === 'none') return null
  const explaining = explains[facts.behavior].find((code) => prior.has(code) && isAble(facts, code, prior))
  return explaining ?? lastResort.find((code) => prior.has(code)) ?? null
}

/** Low tires or a wrong sensor explain a lit lamp only if some value is low enough to light it. */
const isAble = (facts: Facts, code: FindingCode, prior: Pick<PriorFindings, 'has' | 'wheelsOf'>): boolean => {
  if (facts.behavior !== 'solid') return true
  switch (code) {
    case 'altitude-change':
    case 'cold-weather':
    case 'weather-and-seepage':
      return facts.road.some(
        (wheel) =>
          keepsLampLit(wheel.judged, wheel) ||
          keepsLampLit(wheel.cold, wheel) ||
          keepsLampLit(predictedOvernight(facts.place, wheel), wheel),
      )
    case 'sensor-reads-wrong':
    case 'sensor-does-not-follow':
      return prior
        .wheelsOf(code)
        .some((position) =>
          facts.road.some(
            (wheel) => wheel.position === position && keepsLampLit(wheel.sensor.pressure, wheel),
          ),
        )
    default:
      return true
  }
}
