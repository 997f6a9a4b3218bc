import { isKnownPath } from '@bayledger/reckoning/evidence/evidence-ranges'
import { Evidence } from '@bayledger/reckoning/evidence/evidence-schema'
import type { Pressure } from '@bayledger/reckoning/quantity'
import { readTireSize } from '@bayledger/reckoning/tire/read-tire-size'
import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { AdmitFacts } from '../../admit/facts.ts'
import { type Refusal, refuse } from '../../admit/refusal.ts'
import type { Rules } from '../../admit/rule.ts'
import type { arrivalKinds, GaugeUsed, PunctureRecord } from './kinds.ts'
import { latestDayAt, readMade } from './sidewall.ts'

/**
 * The pressures that can be typed, in psi. Inside these bounds an implausible reading is a finding; outside them it is a
 * typing error. A hand gauge of this shop reads to 150 (bounds are ours, no source).
 */
const typedPsi = {
  gauge: { lowest: -20, highest: 150 },
  sensor: { lowest: -20, highest: 400 },
} as const

export const arrivalRules: Rules<keyof typeof arrivalKinds> = {
  'wheel.checked': [
    (_state, { payload: { wheel, gauge, sensor } }) =>
      impossible(wheel, gauge?.pressure, typedPsi.gauge) ??
      impossible(wheel, sensor?.answer === 'answered' ? sensor.pressure : null, typedPsi.sensor),
    (_state, { payload }, facts) => (payload.gauge ? knownGauge(payload.gauge.instrument, facts) : null),
    (state) => (state.authority.look ? null : refuse('AUTHORITY_MISSING', { to: 'look' })),
  ],
  'check.skipped': [
    (_state, { payload: { field } }) =>
      isKnownPath(Evidence, field) ? null : refuse('CHECK_UNKNOWN', { field }),
  ],
  'tire.inspected': [
    (_state, { payload: { wheel, punctures = [] } }) => {
      const wide = punctures.find(({ millimeters }) => (millimeters ?? 0) > widestHoleMillimeters)
      return wide
        ? refuse('PUNCTURE_IMPOSSIBLE', {
            wheel,
            millimeters: wide.millimeters ?? 0,
            mostMillimeters: widestHoleMillimeters,
          })
        : null
    },
    (_state, { payload: { wheel, punctures, tireDamage } }) =>
      tireDamage !== null &&
      punctures !== undefined &&
      tireDamage.includes('puncture') !== punctures.length > 0
        ? refuse('PUNCTURE_CONTRADICTED', { wheel, why: punctures.length > 0 ? 'no-damage' : 'no-hole' })
        : null,
    (_state, { payload: { wheel, punctures = [] } }) =>
      punctures[0]?.fromOthers ? refuse('PUNCTURE_CONTRADICTED', { wheel, why: 'alone' }) : null,
    (_state, { payload: { wheel, punctures = [] } }) =>
      punctures.some((hole, index) => touches(hole, punctures.slice(0, index)))
        ? refuse('PUNCTURE_CONTRADICTED', { wheel, why: 'touching' })
        : null,
    (_state, { payload: { wheel, sizeSeen } }) =>
      sizeSeen?.readable && !readTireSize(sizeSeen.text).ok
        ? refuse('TIRE_SIZE_UNREAD', { wheel, found: sizeSeen.text })
        : null,
    (_state, { payload: { wheel, dateCodeSeen } }, { now }) =>
      dateCodeSeen?.readable && readMade(dateCodeSeen.text, latestDayAt(now)) === null
        ? refuse('TIRE_DATE_UNREAD', { wheel, found: dateCodeSeen.text })
        : null,
  ],
  'module.read': [],
  'telltale.observed': [],
}

/** Two holes that run into one another cannot have repair units that lie apart. */
const touches = ({ millimeters, fromOthers }: PunctureRecord, others: readonly PunctureRecord[]): boolean => {
  const widest = Math.max(0, ...others.map((other) => other.millimeters ?? 0))
  return (
    fromOthers?.unitsOverlap === false &&
    fromOthers.millimeters !== null &&
    fromOthers.millimeters < ((millimeters ?? 0) + widest) / 2
  )
}

/** A wider opening is no puncture: it is a cut, or a typing error (our own bound, no source). */
const widestHoleMillimeters = 50

const impossible = (
  wheel: WheelPosition,
  pressure: Pressure | null | undefined,
  { lowest, highest }: { readonly lowest: number; readonly highest: number },
): Refusal | null => {
  if (!pressure) return null
  const psi = pressureIn('psi', pressure)
  return psi >= lowest && psi <= highest
    ? null
    : refuse('READING_IMPOSSIBLE', { wheel, found: pressure, lowestPsi: lowest, highestPsi: highest })
}

export const knownGauge = ({ instrumentId, code }: GaugeUsed, facts: AdmitFacts): Refusal | null =>
  facts.gauges.has(instrumentId) ? null : refuse('GAUGE_UNKNOWN', { gauge: code })
