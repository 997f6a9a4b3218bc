import { FastenerDamage, TireDamage } from '../../evidence/evidence-schema.ts'
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
    ask: 'Gauge the {wheel} tire.',
    seconds: 6,
    values: plausibleGauges,
  },
  {
    name: 'answer',
    ask: 'Trigger the {wheel} sensor.',
    seconds: 15,
    values: (wheel) => (withSensor(wheel) ? ['answered', 'silent'] : ['not-tried']),
    also: (value, wheel, facts) => answerState(value, wheel, facts),
  },
  {
    name: 'tries',
    ask: 'Say how often the {wheel} sensor was asked, spaced.',
    seconds: 15,
    applies: (wheel) => wheel.sensor.answered || wheel.sensor.silent,
    values: () => [1, 2],
  },
  {
    name: 'id',
    ask: 'Read the ID of the {wheel} sensor.',
    seconds: 15,
    applies: answered,
    values: plausibleIds,
  },
  {
    name: 'sensorPressure',
    ask: 'Read the pressure that the {wheel} sensor tells.',
    seconds: 15,
    applies: answered,
    values: (wheel, facts) =>
      wheel.judged === null ? [] : [wheel.judged, wheel.judged - psi(6)].map((one) => entered(facts, one)),
  },
  {
    name: 'sensorTemperature',
    ask: 'Read the temperature that the {wheel} sensor tells.',
    seconds: 15,
    applies: answered,
    values: (_wheel, facts) =>
      facts.place.outdoor === null
        ? []
        : [facts.place.outdoor, facts.place.outdoor + 40].map(facts.shown.temperatureNumber),
  },
  {
    name: 'battery',
    ask: 'Read the battery flag of the {wheel} sensor.',
    seconds: 15,
    applies: answered,
    values: () => ['ok', 'low'],
  },
  {
    name: 'frequencyMHz',
    ask: 'Read on which frequency the {wheel} sensor sends.',
    seconds: 15,
    applies: answered,
    values: (_wheel, facts) => {
      const needed = facts.evidence.vehicle?.sensorFrequencyMHz
      return typeof needed === 'number' ? [needed, needed > 400 ? 315 : 433.92] : []
    },
  },
  {
    name: 'valve',
    ask: 'Look at the kind of stem on the {wheel} wheel.',
    seconds: 5,
    values: () => ['snap-in', 'clamp-in', 'plain'],
  },
  {
    name: 'stem',
    ask: 'Look at the {wheel} stem and wet it.',
    seconds: 10,
    values: () => ['sound', 'corroded', 'cracked', 'leaks'],
  },
  {
    name: 'mounted',
    ask: 'Look whether the temporary spare stands at the {wheel} position.',
    seconds: 2,
    applies: (wheel) => wheel.road,
    values: () => ['road', 'temporary-spare'],
  },
  {
    name: 'followsPressure',
    ask: 'Change the {wheel} tire by 3 psi and trigger its sensor again.',
    seconds: 60,
    applies: answered,
    values: () => [true, false],
  },
  {
    name: 'sensorAgeMonths',
    ask: 'Find out how old the {wheel} sensor is.',
    seconds: 60,
    applies: withSensor,
    values: () => [36, 108],
  },
  { name: 'tireAgeYears', ask: 'Read the date code of the {wheel} tire.', seconds: 20, values: () => [2, 7] },
  {
    name: 'treadDepth32nds',
    ask: 'Measure the tread of the {wheel} tire at three points.',
    seconds: 15,
    values: () => [8, 4, 2],
  },
  {
    name: 'sealantSeen',
    ask: 'Look for sealant at the stem and tread of the {wheel} tire.',
    seconds: 10,
    values: () => [false, true],
  },
  {
    name: 'tireDamage',
    ask: 'Look over tread and sidewalls of the {wheel} tire.',
    seconds: 20,
    values: () => [[], ...TireDamage.options.map((damage) => [damage])],
  },
  {
    name: 'fastenerDamage',
    ask: 'Look at every fastener of the {wheel} wheel.',
    seconds: 10,
    values: () => [[], ...FastenerDamage.options.map((damage) => [damage])],
  },
  {
    name: 'learnRefusals',
    ask: 'Say how many relearns refused the {wheel} sensor while others were learned.',
    seconds: 10,
    applies: answered,
    values: () => [0, 2],
  },
]

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
  `FFFF${wheel.position === 'SP' ? '0E' : hexOf[wheel.position]}`

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
