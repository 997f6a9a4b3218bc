import type { LightBehavior } from '../evidence/evidence-schema.ts'
import { type Contradiction, ContradictionCode, type Figures, type FindingCode } from './diagnosis.ts'
import type { Judgment } from './engine/judge.ts'
import type { Facts } from './facts/facts.ts'
import { excessOver, isHotCorner } from './facts/hot-corner.ts'
import { storedIsKnown } from './facts/identity.ts'
import { clearsLamp, warns } from './facts/lamp-threshold.ts'
import { frequencyFits, sheetFrequencyDoubtful } from './facts/sensing.ts'
import { unsupportedGauges } from './facts/unsupported-gauge.ts'
import { thresholds } from './thresholds.ts'

type Test = {
  readonly holds: (facts: Facts, found: Found) => boolean
  /** The figures of this contradiction; none for most. */
  readonly values?: (facts: Facts) => Figures
}

type Found = {
  readonly has: (code: FindingCode) => boolean
  /** A finding explains the light that was seen. */
  readonly explained: boolean
}

/** What contradicts what. Both sides are kept and shown; neither is changed to fit the other. */
const tests: Readonly<Record<ContradictionCode, Test>> = {
  'light-against-evidence': {
    holds: (facts, { has, explained }) =>
      has('malfunction-unexplained') ||
      (facts.behavior === 'flash-then-solid' && !explained && everySensorIsHeard(facts)),
  },
  'light-off-tire-low': {
    holds: (facts, { has }) => has('no-warning-given') || isDarkOverLowTire(facts),
  },
  'light-on-tires-right': {
    holds: (facts, { has, explained }) =>
      has('warning-unexplained') || (facts.behavior === 'solid' && !explained && everyTireClears(facts)),
  },
  'gauge-against-sensors': {
    holds: (_facts, { has }) => has('gauge-suspect'),
  },
  'fault-not-flashed': {
    holds: (facts, { has }) =>
      (facts.behavior === 'off' || facts.behavior === 'solid') &&
      facts.lampCheck !== 'dark' &&
      !mayNotHaveJudgedYet(facts) &&
      unheardCodes.some(has),
  },
  'lamp-dark-yet-lit': {
    holds: (facts) => facts.lampCheck === 'dark' && facts.behavior !== null && facts.behavior !== 'off',
  },
  'positions-exchanged': {
    holds: (facts, { has }) =>
      has('tire-low') &&
      (has('rotated-without-relearn') || has('spare-rotated-without-relearn') || namesAnotherWheel(facts)),
  },
  'stray-sensors-heard': {
    holds: (facts) => strayIdsOf(facts).length > 0,
    values: (facts) => ({ count: strayIdsOf(facts).length }),
  },
  'light-reported-otherwise': {
    holds: (facts) => {
      const reported = reportedIn(facts)
      return reported !== null && facts.behavior !== null && reported !== facts.behavior
    },
    values: (facts) => ({ reported: reportedIn(facts) ?? 'off', seen: facts.behavior ?? 'off' }),
  },
  'sheet-frequency-doubtful': {
    holds: (facts) => sheetFrequencyDoubtful(facts),
  },
  'sensor-older-than-reported': {
    holds: (facts) => facts.wheels.some((wheel) => isOlderThanReported(facts, wheel.position)),
  },
  'gauge-unsupported': {
    holds: (facts) => unsupportedGauges(facts).length > 0,
    values: (facts) => {
      const [wheel] = unsupportedGauges(facts)
      if (wheel === undefined) return {}
      return {
        wheel: wheel.position,
        value: facts.display.pressure(wheel.entered ?? 0),
        sensor: facts.display.pressure(wheel.sensor.pressure ?? 0),
        unit: facts.display.unit,
      }
    },
  },
  'hot-corner-tires-cold': {
    holds: (facts, { has }) => facts.place.tiresCold && has('hot-corner'),
    values: (facts) => {
      const wheel = facts.road.find((one) => isHotCorner(facts.road, one))
      if (wheel === undefined) return {}
      return {
        wheel: wheel.position,
        degrees: facts.display.degrees(excessOver(facts.road, wheel) ?? 0),
        temperatureUnit: facts.display.temperatureUnit,
      }
    },
  },
}

/** The contradictions of a judgment, in the order of their codes. */
export const contradictionsOf = ({ facts, judged, primary }: Judgment): Contradiction[] => {
  const has = (code: FindingCode): boolean => judged.some(({ rule }) => rule.code === code)
  const found = { has, explained: primary !== null }
  return ContradictionCode.options
    .filter((code) => tests[code].holds(facts, found))
    .map((code) => ({ code, values: tests[code].values?.(facts) ?? {} }))
}

const strayIdsOf = ({ evidence }: Facts): readonly string[] => evidence.strayIds ?? []

const reportedIn = ({ evidence }: Facts): LightBehavior | null => evidence.light?.reported ?? null

/** Findings of a sensor that the vehicle cannot hear, for which it should flash. */
const unheardCodes = [
  'sensor-silent',
  'no-sensor-on-arrival',
  'frequency-wrong',
  'id-not-stored',
  'stored-id-unheard',
  'other-wheel-set',
  'id-duplicated',
  'control-module-blank',
] as const satisfies readonly FindingCode[]

/** Right after work on the wheels the vehicle has not seen the change yet. */
const mayNotHaveJudgedYet = ({ events, place }: Facts): boolean =>
  (place.minutesDriven ?? 0) < thresholds.judgedAfterMinutes &&
  (['serviced-today', 'topped-up-before-arrival', 'sensor-fitted-today'] as const).some((kind) =>
    events.happened(kind),
  )

/** No lamp check failed, no light, and a tire at or under its warning point, whatever else is still to be checked. */
const isDarkOverLowTire = (facts: Facts): boolean =>
  facts.behavior === 'off' &&
  facts.lampCheck !== 'dark' &&
  (facts.system === 'direct' || facts.system === 'indirect') &&
  facts.wheels.some((wheel) => (wheel.road || facts.spareMonitored) && warns(wheel.judged, wheel))

const everyTireClears = (facts: Facts): boolean =>
  facts.system === 'direct' &&
  facts.road.every((wheel) => clearsLamp(wheel.judged, wheel) && clearsLamp(wheel.seen, wheel))

/** Each wheel sent an ID that the vehicle holds, at whatever position, on the frequency that it listens to. */
const everySensorIsHeard = (facts: Facts): boolean =>
  storedIsKnown(facts) &&
  facts.monitored.length > 0 &&
  facts.monitored.every(
    (wheel) =>
      wheel.sensor.idKey !== null &&
      facts.stored.all.has(wheel.sensor.idKey) &&
      frequencyFits(facts, wheel) === true,
  )

/** The vehicle stores a low-pressure code for a tire that is not low, and none for the one that is. */
const namesAnotherWheel = (facts: Facts): boolean => {
  const named = facts.codes.flatMap((code) => (code.class === 'low-pressure' ? (code.wheel ?? []) : []))
  const isLow = (wheel: Facts['road'][number]) =>
    wheel.judged !== null && wheel.warn !== null && wheel.judged <= wheel.warn
  return (
    named.length > 0 &&
    facts.road.some(isLow) &&
    facts.road.every((wheel) => !(named.includes(wheel.position) && isLow(wheel)))
  )
}

const isOlderThanReported = (facts: Facts, position: Facts['wheels'][number]['position']): boolean => {
  const age = facts.wheel(position)?.given.sensorAgeMonths
  if (typeof age !== 'number') return false
  return (facts.evidence.events ?? []).some(
    (event) =>
      (event.kind === 'sensor-replaced-elsewhere' || event.kind === 'sensor-fitted-today') &&
      event.happened !== false &&
      event.wheel === position &&
      age > thresholds.shelfMonths + (event.daysAgo ?? 0) / 30,
  )
}
