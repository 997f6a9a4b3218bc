import type { Facts } from '../facts/facts.ts'
import { offsetOf } from '../facts/offsets.ts'
import { doesNotFollow, isAsleep } from '../facts/sensor-doubts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, type Match, onWheels, positionsOf, type RuleBook, wheelFigures } from '../rule.ts'

const offsetFields = [
  'wheels.*.gauge',
  'wheels.*.answer',
  'wheels.*.sensorPressure',
  'events.moved-since-reading',
  'events.air-added',
  'wheels.*.followsPressure',
  'wheels.*.sensorAgeMonths',
  'events.sensor-fitted-today',
  'events.sensor-replaced-elsewhere',
] as const

/** Whether the pressures and temperatures that the sensors send can be right. */
export const sensorReadingRules = {
  'sensor-reads-wrong': {
    kind: 'also',
    confidence: 'likely',
    reads: offsetFields,
    when: "A sensor's distance from the gauge differs by 3 psi or more from that of the others; three sensors at least.",
    means: 'The sensor reports a wrong pressure to the vehicle.',
    offers: ['sensor', 'service-kit', 'relearn'],
    holds: [],
    find: sensorsApart,
  },
  'sensors-refer-to-sea-level': {
    kind: 'note',
    confidence: 'firm',
    reads: [...offsetFields, 'surroundings.altitude'],
    when: 'All sensors are off the gauge alike, by what the altitude explains within 1 psi.',
    means: 'Normal: these sensors refer to the sea.',
    offers: [],
    holds: [],
    find: (facts) => (facts.offsets?.ofAltitude === true ? offsetMatch(facts) : null),
  },
  'gauge-suspect': {
    kind: 'also',
    confidence: 'likely',
    reads: [...offsetFields, 'surroundings.altitude'],
    when: 'All sensors are off the gauge alike, and altitude does not explain it.',
    means: 'One wrong gauge is likelier than all sensors wrong.',
    offers: [],
    holds: ['pressure-setting'],
    find: (facts) => {
      const offsets = facts.offsets
      return offsets?.notable && offsets.ofAltitude === false ? offsetMatch(facts) : null
    },
  },
  'sensor-temperature-impossible': {
    kind: 'also',
    confidence: 'likely',
    reads: ['wheels.*.answer', 'wheels.*.sensorTemperature'],
    when: "A sensor's temperature is at or beyond -40 or 257 °F.",
    means: 'The sensor is failing.',
    offers: ['sensor', 'service-kit', 'relearn'],
    holds: [],
    find: (facts) =>
      facts.sensing
        ? onWheels(
            facts.wheels,
            (wheel) => wheel.sensor.temperatureImpossible,
            (wheels) => ({
              because: () =>
                groundsOf(wheels, 'sensorTemperature', () => ({ code: 'no-air-at-that-temperature' })),
              figures: () => wheelFigures(wheels),
            }),
          )
        : null,
  },
  'sensor-does-not-follow': {
    kind: 'also',
    confidence: 'firm',
    reads: ['wheels.*.answer', 'wheels.*.followsPressure'],
    when: "A sensor's value does not follow a pressure change of 3 psi or more.",
    means: 'Its port is blocked, or the sensor that answers is not in this tire.',
    offers: ['sensor-clean', 'sensor', 'service-kit', 'relearn'],
    holds: [],
    find: (facts) =>
      facts.sensing
        ? onWheels(facts.wheels, doesNotFollow, (wheels) => ({
            because: () => groundsOf(wheels, 'followsPressure', () => ({ code: 'did-not-follow' })),
            figures: () => wheelFigures(wheels),
          }))
        : null,
  },
  'sensor-asleep': {
    kind: 'also',
    confidence: 'likely',
    reads: [
      ...offsetFields,
      'wheels.*.sensorAgeMonths',
      'events.sensor-fitted-today',
      'events.sensor-replaced-elsewhere',
    ],
    when: 'A new sensor reports no pressure although its tire holds air.',
    means: 'It has not been woken yet.',
    offers: [],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) => isAsleep(facts, wheel),
        (wheels) => ({
          because: () => groundsOf(wheels, 'sensorPressure', () => ({ code: 'nothing-in-inflated-tire' })),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
} satisfies Partial<RuleBook>

function sensorsApart(facts: Facts): Match | null {
  if (!facts.sensing) return null
  const offsets = facts.offsets
  const apart = offsets?.apart ?? []
  if (offsets === null || apart.length === 0) return null
  const distance = (wheel: WheelFacts) => Math.abs((offsetOf(wheel) ?? 0) - offsets.median)
  return {
    wheels: positionsOf(apart),
    because: (wheels) =>
      groundsOf(wheels, 'sensorPressure', (wheel) => ({
        code: 'off-by-another-amount',
        values: {
          offset: facts.display.pressure(offsetOf(wheel) ?? 0),
          median: facts.display.pressure(offsets.median),
          unit: facts.display.unit,
        },
      })),
    figures: (wheels) => {
      const worst = [...wheels].sort((one, other) => distance(other) - distance(one))[0]
      return {
        ...(worst === undefined ? {} : wheelFigures([worst])),
        sensor: facts.display.pressure(worst?.sensor.pressure ?? 0),
        value: facts.display.pressure(worst?.judged ?? 0),
        unit: facts.display.unit,
      }
    },
  }
}

const offsetMatch = (facts: Facts): Match | null => {
  const offsets = facts.offsets
  if (!facts.sensing || offsets === null) return null
  return {
    wheels: [],
    because: () =>
      groundsOf(
        facts.road.filter((wheel) => offsetOf(wheel) !== null),
        'sensorPressure',
        (wheel) => ({
          code: 'under-gauge',
          values: { offset: facts.display.pressure(offsetOf(wheel) ?? 0), unit: facts.display.unit },
        }),
      ),
    figures: () => ({
      difference: facts.display.pressure(Math.abs(offsets.median)),
      unit: facts.display.unit,
      ...(offsets.median < 0 ? { form: 'over' } : {}),
    }),
  }
}
