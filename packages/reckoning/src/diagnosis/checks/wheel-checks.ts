import { FastenerDamage, InsideTire, TireDamage } from '../../evidence/evidence-schema.ts'
import { fromKilopascals, psi } from '../../evidence/si.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import type { WheelCheck } from './field-check.ts'

const answered = (wheel: WheelFacts): boolean => wheel.sensor.answered
const withSensor = (wheel: WheelFacts): boolean => wheel.monitored || wheel.sensor.answered

/** What can be found out about each wheel, in the order in which a technician meets it. */
export const wheelChecks: readonly WheelCheck[] = [
  {
    name: 'gauge',
    seconds: 6,
    values: plausibleGauges,
  },
  {
    name: 'answer',
    seconds: 15,
    values: (wheel) => (withSensor(wheel) ? ['answered', 'silent'] : ['not-tried']),
    also: (value, wheel, facts) => answerState(value, wheel, facts),
  },
  {
    name: 'tries',
    seconds: 15,
    applies: (wheel) => wheel.sensor.answered || wheel.sensor.silent,
    values: () => [1, 2],
  },
  {
    name: 'id',
    seconds: 15,
    applies: answered,
    values: plausibleIds,
  },
  {
    name: 'sensorPressure',
    seconds: 15,
    applies: answered,
    values: (wheel, facts) =>
      wheel.judged === null ? [] : [wheel.judged, wheel.judged - psi(6)].map((one) => entered(facts, one)),
  },
  {
    name: 'sensorTemperature',
    seconds: 15,
    applies: answered,
    values: (_wheel, facts) =>
      facts.place.outdoor === null
        ? []
        : [facts.place.outdoor, facts.place.outdoor + 40].map(facts.display.temperature),
  },
  {
    name: 'battery',
    seconds: 15,
    applies: answered,
    values: () => ['ok', 'low'],
  },
  {
    name: 'frequencyMHz',
    seconds: 15,
    applies: answered,
    values: (_wheel, facts) => {
      const needed = facts.evidence.vehicle?.sensorFrequencyMHz
      return typeof needed === 'number' ? [needed, needed > 400 ? 315 : 433.92] : []
    },
  },
  {
    name: 'valve',
    seconds: 5,
    values: () => ['snap-in', 'clamp-in', 'plain'],
  },
  {
    name: 'stem',
    seconds: 10,
    values: () => ['sound', 'corroded', 'cracked', 'leaks'],
  },
  {
    name: 'mounted',
    seconds: 2,
    applies: (wheel) => wheel.road,
    values: () => ['road', 'temporary-spare'],
  },
  {
    name: 'followsPressure',
    seconds: 60,
    applies: answered,
    values: () => [true, false],
  },
  {
    name: 'sensorAgeMonths',
    seconds: 60,
    applies: withSensor,
    values: () => [36, 108],
  },
  { name: 'tireAgeYears', seconds: 20, values: () => [2, 7] },
  {
    name: 'treadDepth32nds',
    seconds: 15,
    values: () => [8, 4, 2],
  },
  {
    name: 'sealantSeen',
    seconds: 10,
    values: () => [false, true],
  },
  {
    name: 'tireDamage',
    seconds: 20,
    values: () => [[], ...TireDamage.options.map((damage) => [damage])],
  },
  {
    name: 'punctures',
    seconds: 60,
    applies: isPunctured,
    values: () =>
      [
        { place: 'crown', millimeters: 3, overlapsRepair: false },
        { place: 'crown', millimeters: 8, overlapsRepair: false },
        { place: 'shoulder', millimeters: 3, overlapsRepair: false },
      ].map((hole) => [hole]),
  },
  {
    name: 'insideTire',
    seconds: 900,
    isWorthIt: (wheel, facts) => isPunctured(wheel) || facts.events.happened('driven-low', wheel.position),
    values: () => InsideTire.options,
  },
  {
    name: 'fastenerDamage',
    seconds: 10,
    values: () => [[], ...FastenerDamage.options.map((damage) => [damage])],
  },
  {
    name: 'learnRefusals',
    seconds: 10,
    applies: answered,
    values: () => [0, 2],
  },
]

function isPunctured({ given }: WheelFacts): boolean {
  return given.tireDamage?.includes('puncture') === true
}

/** At the warning point half a psi under and over, at the label figure and at half of it. */
function plausibleGauges(wheel: WheelFacts, facts: Facts): readonly number[] {
  const label = wheel.labelAsGiven
  if (label === null) return [psi(10), psi(35)].map((one) => entered(facts, one))
  const around = wheel.warn === null ? [] : [wheel.warn - psi(0.5), wheel.warn + psi(0.5)]
  return [...around, label, label / 2].map((one) => entered(facts, one))
}

/** As stored for this place, as stored for another one, and known to nobody. */
function plausibleIds(wheel: WheelFacts, facts: Facts): readonly string[] {
  const stored = facts.stored.keys[wheel.position]
  const others = Object.values(facts.stored.keys).filter((key) => key !== null && key !== stored)
  return [
    ...new Set([...(stored === null ? [] : [stored]), ...others.slice(0, 1), unknownId(wheel)]),
  ].flatMap((id) => id ?? [])
}

/** An ID that no other wheel of the supposition has. */
const unknownId = (wheel: WheelFacts): string =>
  `F0FF${wheel.position === 'SP' ? '0E' : hexOf[wheel.position]}`

const hexOf = { LF: '0A', RF: '0B', RR: '0C', LR: '0D' } as const

const answerState = (value: unknown, wheel: WheelFacts, facts: Facts) => {
  const at = `wheels.${wheel.position}`
  if (value === 'silent') return { [`${at}.tries`]: 2 }
  if (value !== 'answered') return {}
  const needed = facts.evidence.vehicle?.sensorFrequencyMHz
  return {
    [`${at}.tries`]: 1,
    [`${at}.id`]: facts.stored.keys[wheel.position] ?? unknownId(wheel),
    [`${at}.battery`]: 'ok',
    ...(wheel.judged === null ? {} : { [`${at}.sensorPressure`]: entered(facts, wheel.judged) }),
    ...(typeof needed === 'number' ? { [`${at}.frequencyMHz`]: needed } : {}),
  }
}

const entered = (facts: Facts, kilopascals: number): number =>
  Number(fromKilopascals(kilopascals, facts.evidence.units.pressure).toFixed(3))
