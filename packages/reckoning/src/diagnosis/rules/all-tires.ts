import { lostToAltitude } from '../../pressure/altitude-change.ts'
import { atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import { kilopascalsApart } from '../../units/measured.ts'
import { kilopascalsOver, magnitude } from '../../units/pressure-difference.ts'
import type { Figures } from '../diagnosis.ts'
import { type AlikeLow, predictedOvernight } from '../facts/alike.ts'
import type { Facts } from '../facts/facts.ts'
import { warns } from '../facts/lamp-threshold.ts'
import { groundsOf, type Match, onWheels, positionsOf, type RuleBook, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { coldWords, pressureFields, warnWords } from './pressure-words.ts'

/** What shows only when all four road tires are looked at together. */
export const allTiresRules = {
  'cold-weather': {
    kind: 'also',
    confidence: 'firm',
    reads: [...pressureFields, 'surroundings.lastSet.temperature'],
    when: 'All four tires are 2.5 psi or more under the label, alike within 2 psi, and colder air since they were set explains 60 % of it.',
    means: 'The weather did it; nothing leaks.',
    next: 'Set all four to the label figure, corrected for temperature.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const low = facts.alikeLow
      return low?.coldShare != null && isMostlyCold(low) ? alikeMatch(facts, low) : null
    },
  },
  'weather-and-seepage': {
    kind: 'also',
    confidence: 'likely',
    reads: [...pressureFields, 'surroundings.lastSet.temperature'],
    when: 'All four are low alike as in cold-weather, and the cold explains less, or nobody knows when they were set.',
    means: 'Weather and the ordinary seepage of months, not a leak.',
    next: 'Set all four, and advise a look at them every month.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const low = facts.alikeLow
      return low === null || isMostlyCold(low) ? null : alikeMatch(facts, low)
    },
  },
  'altitude-change': {
    kind: 'also',
    confidence: 'likely',
    reads: [...pressureFields, 'surroundings.lastSet.altitude'],
    when: 'All four are low alike, the air here is denser by 0.5 psi or more than where they were set, and the lack is within 1.5 psi of that.',
    means: 'The vehicle came down in altitude.',
    next: 'Set all four here.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const low = facts.alikeLow
      const { airKnown, lastSetAir } = facts.place
      if (low === null || airKnown === null || lastSetAir === null) return null
      const rise = lostToAltitude(lastSetAir, airKnown)
      if (!atOrAbove(rise, thresholds.altitudeRise)) return null
      if (!atOrBelow(kilopascalsApart(Math.abs(low.meanDeficit - rise)), thresholds.altitudeWithin))
        return null
      return {
        ...alikeMatch(facts, low),
        because: () => [
          ...groundsOf(facts.road, 'gauge', (wheel) => coldWords(facts, wheel)),
          {
            field: 'surroundings.lastSet.altitude',
            says: `the air is denser here by ${facts.shown.pressure(rise)}`,
          },
        ],
      }
    },
  },
  'axle-pressures-exchanged': {
    kind: 'also',
    confidence: 'firm',
    reads: pressureFields,
    when: "Front and rear label figures differ by 3 psi or more, and each axle holds the other's within 1.5 psi.",
    means: 'The wheels changed axles and kept their pressures.',
    next: 'Set each axle to its own figure, then see whether the vehicle learned the new places.',
    offers: ['pressure-set'],
    holds: ['relearn'],
    find: exchangedAxles,
  },
  'cold-morning-margin': {
    kind: 'also',
    confidence: 'firm',
    reads: ['light.behavior', ...pressureFields, 'surroundings.overnightLow'],
    when: 'The light comes on cold mornings, no tire is at its warning point now, and one will be at the overnight low.',
    means: 'The margin is too small for the nights.',
    next: 'Set the tires; the light then stays out on cold mornings.',
    offers: ['pressure-set'],
    holds: [],
    find: coldMorningMargin,
  },
} satisfies Partial<RuleBook>

const isMostlyCold = (low: AlikeLow): boolean =>
  low.coldShare !== null && low.coldShare >= thresholds.coldShare - 1e-6

const alikeMatch = (facts: Facts, low: AlikeLow): Match => ({
  wheels: positionsOf(facts.road),
  because: () => [
    ...groundsOf(facts.road, 'gauge', (wheel) => coldWords(facts, wheel)),
    ...(low.coldShare === null
      ? []
      : [
          {
            field: 'surroundings.lastSet.temperature',
            says: `colder air since explains ${Math.round(low.coldShare * 100)} % of it`,
          },
        ]),
  ],
  figures: () => alikeFigures(facts, low),
})

const alikeFigures = (facts: Facts, low: AlikeLow): Figures => {
  const { lastSetTemperature, outdoor } = facts.place
  const colder = lastSetTemperature === null || outdoor === null ? 0 : lastSetTemperature - outdoor
  return {
    ...wheelFigures(facts.road),
    difference: facts.shown.pressureNumber(low.meanDeficit),
    unit: facts.shown.unit,
    ...(colder > 0
      ? { degrees: facts.shown.degreesNumber(colder), temperatureUnit: facts.shown.temperatureUnit }
      : { form: 'temperature-unknown' }),
  }
}

function exchangedAxles(facts: Facts): Match | null {
  const front = facts.wheel('LF')?.label
  const rear = facts.wheel('RR')?.label
  if (
    front == null ||
    rear == null ||
    !atOrAbove(magnitude(kilopascalsOver(front, rear)), thresholds.splitPlacard)
  )
    return null
  const exchanged = facts.road.every((wheel) => {
    const others = wheel.label === front ? rear : front
    return (
      !wheel.carriesSpare &&
      wheel.cold !== null &&
      atOrBelow(magnitude(kilopascalsOver(wheel.cold, others)), thresholds.exchangedWithin)
    )
  })
  if (!exchanged) return null
  return {
    wheels: positionsOf(facts.road),
    because: () =>
      groundsOf(facts.road, 'gauge', (wheel) => `${coldWords(facts, wheel)}, as on the other axle`),
    figures: () => ({
      ...wheelFigures(facts.road),
      front: facts.shown.pressureNumber(front),
      rear: facts.shown.pressureNumber(rear),
      unit: facts.shown.unit,
    }),
  }
}

function coldMorningMargin(facts: Facts): Match | null {
  if (facts.behavior !== 'intermittent-cold') return null
  if (facts.road.some((wheel) => warns(wheel.judged, wheel))) return null
  const predicted = (wheel: Facts['road'][number]) => predictedOvernight(facts.place, wheel)
  return onWheels(
    facts.road,
    (wheel) => warns(predicted(wheel), wheel),
    (wheels) => ({
      because: () =>
        groundsOf(
          wheels,
          'gauge',
          (wheel) =>
            `${facts.shown.pressure(predicted(wheel) ?? 0)} at the overnight low, at or under the warning point of ${warnWords(facts, wheel)}`,
        ),
      figures: () => ({
        ...wheelFigures(wheels),
        value: facts.shown.pressureNumber(Math.min(...wheels.map((wheel) => predicted(wheel) ?? 0))),
        unit: facts.shown.unit,
        degrees: facts.shown.temperatureNumber(facts.place.overnightLow ?? 0),
        temperatureUnit: facts.shown.temperatureUnit,
      }),
    }),
  )
}
