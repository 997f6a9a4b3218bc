import { lostToAltitude } from '../../pressure/altitude-change.ts'
import { atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import { kilopascalsApart } from '../../units/measured.ts'
import { kilopascalsOver, magnitude } from '../../units/pressure-difference.ts'
import type { Figures } from '../diagnosis.ts'
import { type ColdGroup, predictedOvernight } from '../facts/cold-group.ts'
import type { Facts } from '../facts/facts.ts'
import { warns } from '../facts/lamp-threshold.ts'
import {
  type Beside,
  groundsOf,
  type Match,
  onWheels,
  positionsOf,
  type RuleBook,
  wheelFigures,
} from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { coldGroupFields, coldOf, coldUnderLabel, pressureFields, warningPointOf } from './pressure-words.ts'

/** What shows only when all four road tires are looked at together. */
export const allTiresRules = {
  'cold-weather': {
    kind: 'also',
    confidence: 'firm',
    reads: coldGroupFields,
    when: 'Tires are 2.5 psi or more under the label together: all four alike within 2 psi, or those that lack what colder air alone takes, or three alike; and colder air since they were set explains 60 % of it.',
    means: 'The weather did it; nothing leaks.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const low = facts.coldGroup
      if (low === null || !isMostlyCold(low)) return null
      return { ...groupMatch(facts, low), confidence: low.wheels.length === 4 ? 'firm' : 'likely' }
    },
  },
  'weather-and-seepage': {
    kind: 'also',
    confidence: 'likely',
    reads: coldGroupFields,
    when: 'Tires are low together as in cold-weather, and the cold explains less, or nobody knows when they were set; what neither cold nor descent explains is 25 % of the label at most.',
    means: 'Weather and the ordinary seepage of months, not a leak.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const low = facts.coldGroup
      return low === null || isMostlyCold(low) ? null : groupMatch(facts, low)
    },
  },
  'altitude-change': {
    kind: 'also',
    confidence: 'likely',
    reads: coldGroupFields,
    when: 'Tires are low together as in cold-weather, the air here is denser by 0.5 psi or more than where they were set, and the lack is within 1.5 psi of that.',
    means: 'The vehicle came down in altitude.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const low = facts.coldGroup
      const { airKnown, lastSetAir } = facts.place
      if (low === null || airKnown === null || lastSetAir === null) return null
      const rise = lostToAltitude(lastSetAir, airKnown)
      if (!atOrAbove(rise, thresholds.altitudeRise)) return null
      if (!atOrBelow(kilopascalsApart(Math.abs(low.meanDeficit - rise)), thresholds.altitudeWithin))
        return null
      return {
        ...groupMatch(facts, low),
        because: () => [
          ...groundsOf(low.wheels, 'gauge', (wheel) => coldUnderLabel(facts, wheel)),
          {
            field: 'surroundings.lastSet.altitude',
            code: 'air-denser-here',
            values: { difference: facts.display.pressure(rise), unit: facts.display.unit },
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
    offers: ['pressure-set'],
    holds: [],
    find: coldMorningMargin,
  },
} satisfies Partial<RuleBook>

const isMostlyCold = (low: ColdGroup): boolean =>
  low.coldShare !== null && low.coldShare >= thresholds.coldShare - 1e-6

const groupMatch = (facts: Facts, low: ColdGroup): Match => ({
  wheels: positionsOf(low.wheels),
  because: () => [
    ...groundsOf(low.wheels, 'gauge', (wheel) => coldUnderLabel(facts, wheel)),
    ...(low.coldShare === null
      ? []
      : [
          {
            field: 'surroundings.lastSet.temperature',
            code: 'colder-air-explains' as const,
            values: { percent: Math.round(low.coldShare * 100) },
          },
        ]),
  ],
  figures: (_wheels, beside) => groupFigures(facts, low, beside),
})

const groupFigures = (facts: Facts, low: ColdGroup, { stop }: Beside): Figures => {
  const { lastSetTemperature, outdoor } = facts.place
  const colder = lastSetTemperature === null || outdoor === null ? 0 : lastSetTemperature - outdoor
  return {
    ...wheelFigures(low.wheels),
    difference: facts.display.pressure(low.meanDeficit),
    unit: facts.display.unit,
    ...(colder > 0
      ? { degrees: facts.display.degrees(colder), temperatureUnit: facts.display.temperatureUnit }
      : { form: 'temperature-unknown' }),
    ...(stop ? { form: 'beside-a-stop' } : {}),
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
      groundsOf(facts.road, 'gauge', (wheel) => ({
        code: 'cold-as-other-axle',
        values: coldOf(facts, wheel),
      })),
    figures: () => ({
      ...wheelFigures(facts.road),
      front: facts.display.pressure(front),
      rear: facts.display.pressure(rear),
      unit: facts.display.unit,
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
        groundsOf(wheels, 'gauge', (wheel) => ({
          code: 'overnight-at-or-under-warning-point',
          values: {
            predicted: facts.display.pressure(predicted(wheel) ?? 0),
            ...warningPointOf(facts, wheel),
          },
        })),
      figures: () => ({
        ...wheelFigures(wheels),
        value: facts.display.pressure(Math.min(...wheels.map((wheel) => predicted(wheel) ?? 0))),
        unit: facts.display.unit,
        degrees: facts.display.temperature(facts.place.overnightLow ?? 0),
        temperatureUnit: facts.display.temperatureUnit,
      }),
    }),
  )
}
