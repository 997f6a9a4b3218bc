import type { Facts } from '../facts/facts.ts'
import { hasCode, hasNoSensor, hasReceiverFault, isSilent } from '../facts/sensing.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, onWheels, positionsOf, type RuleBook, type Shown, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'

const answerFields = ['vehicle.system', 'wheels.*.answer', 'wheels.*.tries'] as const

/** Whether each wheel that should have a sensor has one, and whether it speaks. */
export const sensorPresenceRules = {
  'sensor-silent': {
    kind: 'also',
    confidence: 'likely',
    reads: [...answerFields, 'controlModule.codes', 'light.behavior'],
    when: 'A wheel was silent at two spaced tries or more, and another answered.',
    means: 'Its sensor does not send.',
    offers: ['sensor', 'service-kit', 'relearn'],
    holds: [],
    find: (facts) =>
      facts.wheels.some((wheel) => wheel.sensor.answered)
        ? onWheels(facts.monitored, isSilent, (wheels) => ({
            // Until the vehicle's own receiver is settled, a new sensor would cure nothing for certain.
            ...(hasReceiverFault(facts) ? { offers: [] } : {}),
            confidence: wheels.every((wheel) => isConfirmedSilent(facts, wheel)) ? 'firm' : 'likely',
            because: (wheels) => [
              ...groundsOf(wheels, 'answer', ({ sensor }) => ({
                code: 'silent-while-others-answered',
                values: { tries: sensor.tries },
              })),
              ...wheels
                .filter((wheel) => hasCode(facts, 'no-signal', wheel))
                .map((wheel) => ({
                  field: 'controlModule.codes',
                  code: 'vehicle-misses-it-too' as const,
                  values: { wheel: wheel.position },
                })),
            ],
            figures: (wheels) => ({
              ...wheelFigures(wheels),
              tries: Math.min(...wheels.map((wheel) => wheel.sensor.tries)),
            }),
          }))
        : null,
  },
  'no-wheel-answers': {
    kind: 'also',
    confidence: 'possible',
    reads: [
      ...answerFields,
      'wheels.*.valve',
      'vehicle.sensorMounting',
      'wheels.*.sensorAgeMonths',
      'controlModule.codes',
    ],
    when: 'No wheel answers, and each was tried twice or more.',
    means:
      'Reader set-up, the wrong model year, a system without sensors or radio noise come before four dead sensors.',
    offers: [],
    holds: [],
    find: (facts) => {
      const expected = facts.road.filter((wheel) => wheel.monitored && !hasNoSensor(facts, wheel))
      if (expected.length < 2 || !expected.every(isSilent)) return null
      if (facts.wheels.some((wheel) => wheel.sensor.answered)) return null
      const oldAndMissed = expected.every(
        (wheel) =>
          (wheel.given.sensorAgeMonths ?? 0) >= thresholds.usualLifeMonths &&
          hasCode(facts, 'no-signal', wheel),
      )
      return {
        wheels: positionsOf(expected),
        confidence: oldAndMissed ? 'likely' : 'possible',
        because: () => groundsOf(expected, 'answer', silentReason),
        figures: () => wheelFigures(expected),
      }
    },
  },
  'no-sensor-on-arrival': {
    kind: 'also',
    confidence: 'firm',
    reads: [...answerFields, 'wheels.*.valve', 'vehicle.sensorMounting', 'vehicle.spareMonitored'],
    when: 'A wheel that the vehicle listens to came with a plain stem and was silent at two tries or more.',
    means: 'There was no sensor in it when it came.',
    offers: ['sensor', 'service-kit', 'relearn'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) => hasNoSensor(facts, wheel),
        (wheels) => ({
          because: () => [
            ...groundsOf(wheels, 'valve', () => ({ code: 'plain-stem' })),
            ...groundsOf(wheels, 'answer', silentReason),
          ],
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
  'temporary-spare-fitted': {
    kind: 'note',
    confidence: 'firm',
    reads: ['vehicle.system', 'wheels.*.mounted'],
    when: 'The temporary spare is mounted at a road position.',
    means: 'It has no sensor, and its own label figure governs.',
    offers: [],
    holds: [],
    find: (facts) =>
      facts.sensing
        ? onWheels(
            facts.road,
            (wheel) => wheel.carriesSpare,
            (wheels) => ({
              because: () => groundsOf(wheels, 'mounted', () => ({ code: 'no-sensor-heard-here' })),
              figures: () => wheelFigures(wheels),
            }),
          )
        : null,
  },
} satisfies Partial<RuleBook>

const silentReason = ({ sensor }: WheelFacts): Shown => ({ code: 'silent', values: { tries: sensor.tries } })

const isConfirmedSilent = (facts: Facts, wheel: WheelFacts): boolean =>
  hasCode(facts, 'no-signal', wheel) || facts.behavior === 'flash-then-solid'
