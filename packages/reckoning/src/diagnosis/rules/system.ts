import type { EventKind } from '../../evidence/evidence-schema.ts'
import type { Facts } from '../facts/facts.ts'
import { isOffLabel, pressuresRight } from '../facts/label-match.ts'
import { groundsOf, onWheels, positionsOf, type RuleBook, wheelFigures } from '../rule.ts'
import { coldFigures, coldGroupFields, coldUnderLabel, pressureFields } from './pressure-words.ts'

const indirectAndSolid = (facts: Facts): boolean => facts.system === 'indirect' && facts.behavior === 'solid'

/** Events after which a vehicle without sensors needs a reset although its tires are right. */
const resetEvents = [
  'rotation',
  'tires-changed',
  'seasonal-wheels',
  'used-wheel',
  'aftermarket-wheels',
  'battery-disconnected',
  'serviced-today',
  'topped-up-before-arrival',
] as const satisfies readonly EventKind[]

const resetEventsOf = (facts: Facts) => resetEvents.filter((kind) => facts.events.happened(kind))

/** Vehicles that compare wheel speeds, or monitor nothing. */
export const systemRules = {
  'set-then-reset': {
    kind: 'also',
    confidence: 'firm',
    reads: ['vehicle.system', 'light.behavior', ...pressureFields],
    when: 'A vehicle without wheel sensors shows a solid light, and a cold tire is more than 1.5 psi off its label figure.',
    means: 'It compares the wheels, and they differ.',
    offers: ['pressure-set', 'reset'],
    holds: [],
    find: (facts) =>
      indirectAndSolid(facts)
        ? onWheels(facts.road, isOffLabel, (wheels) => ({
            because: () => groundsOf(wheels, 'gauge', (wheel) => coldUnderLabel(facts, wheel)),
            figures: () => coldFigures(facts, wheels),
          }))
        : null,
  },
  'reset-only': {
    kind: 'also',
    confidence: 'firm',
    reads: [
      'vehicle.system',
      'light.behavior',
      ...pressureFields,
      ...resetEvents.map((kind) => `events.${kind}`),
    ],
    when: 'The same with right pressures, after rotation, tire, inflation or battery work.',
    means: 'The vehicle does not know yet that the tires are right.',
    offers: ['reset'],
    holds: [],
    find: (facts) =>
      indirectAndSolid(facts) && pressuresRight(facts) && resetEventsOf(facts).length > 0
        ? {
            wheels: [],
            because: () =>
              resetEventsOf(facts).map((kind) => ({
                field: `events.${kind}`,
                code: 'compares-with-earlier-wheels',
              })),
          }
        : null,
  },
  'reset-and-recheck': {
    kind: 'also',
    confidence: 'possible',
    reads: ['vehicle.system', 'light.behavior', ...pressureFields],
    when: 'The same with right pressures and no such work.',
    means: 'It may be nothing; if it returns, a slow leak or unequal tires.',
    offers: ['reset'],
    holds: [],
    find: (facts) =>
      indirectAndSolid(facts) && pressuresRight(facts) && resetEventsOf(facts).length === 0
        ? {
            wheels: [],
            because: () => [{ field: 'light.behavior', code: 'solid-with-right-tires' }],
          }
        : null,
  },
  'wheel-speed-fault': {
    kind: 'also',
    confidence: 'likely',
    reads: ['vehicle.system', 'light.behavior'],
    when: 'A vehicle without wheel sensors flashes, then stays lit.',
    means: 'A fault in wheel-speed sensing or the brake system, or unequal tires.',
    offers: ['outside-work'],
    holds: [],
    find: (facts) =>
      facts.system === 'indirect' && facts.behavior === 'flash-then-solid'
        ? { wheels: [], because: () => [{ field: 'light.behavior', code: 'fault-not-pressure' }] }
        : null,
  },
  'no-monitoring-fitted': {
    kind: 'also',
    confidence: 'firm',
    reads: ['vehicle.system'],
    when: 'The vehicle monitors no tire pressure.',
    means: 'The light is some other lamp.',
    offers: ['outside-work'],
    holds: [],
    find: (facts) =>
      facts.system === 'none'
        ? { wheels: [], because: () => [{ field: 'vehicle.system', code: 'none-fitted' }] }
        : null,
  },
  'equal-loss-unseen': {
    kind: 'note',
    confidence: 'firm',
    reads: ['vehicle.system', 'light.behavior', ...coldGroupFields],
    when: 'A vehicle without wheel sensors shows no light although all four tires are low together.',
    means: 'It compares wheels, so an equal loss is hard for it to see.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) =>
      facts.system === 'indirect' && facts.behavior === 'off' && facts.coldGroup?.wheels.length === 4
        ? {
            wheels: [],
            because: () => groundsOf(facts.road, 'gauge', (wheel) => coldUnderLabel(facts, wheel)),
          }
        : null,
  },
  'system-kind-contradicted': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['vehicle.system', 'wheels.*.answer'],
    when: 'The vehicle is said to have no wheel sensors, and a wheel answers.',
    means: 'The sheet is wrong, or these are not its wheels.',
    offers: [],
    holds: [],
    find: (facts) => {
      if (facts.sensing) return null
      const answered = facts.wheels.filter((wheel) => wheel.sensor.answered)
      if (answered.length === 0) return null
      return {
        wheels: positionsOf(answered),
        because: () => [
          { field: 'vehicle.system', code: 'no-sensors-expected' },
          ...groundsOf(answered, 'answer', () => ({ code: 'answers-all-the-same' })),
        ],
        figures: () => wheelFigures(answered),
      }
    },
  },
} satisfies Partial<RuleBook>
