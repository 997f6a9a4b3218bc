import type { Facts } from '../facts/facts.ts'
import { wheelsSharingAnId } from '../facts/shared-ids.ts'
import { ground, groundsOf, type Match, onWheels, positionsOf, type RuleBook, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'

/** What to check before judging. */
export const askRules = {
  'gauge-missing': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['wheels.*.gauge'],
    when: 'A road wheel has no gauge value, and nobody noted why.',
    means: 'No pressure verdict on that wheel.',
    offers: [],
    holds: ['wheel-removal', 'pressure-setting'],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) =>
          typeof wheel.given.gauge !== 'number' && !facts.notPossible(`wheels.${wheel.position}.gauge`),
        (wheels) => ({
          because: () => groundsOf(wheels, 'gauge', () => ({ code: 'no-gauge-value' })),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
  'light-not-witnessed': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['light.behavior', 'light.lampCheck'],
    when: 'We have not seen the lamp check at key-on, or what the light does.',
    means: 'We know what the light does only from what the customer says.',
    offers: [],
    holds: [],
    find: (facts) => {
      const missing = (['behavior', 'lampCheck'] as const).filter(
        (name) => facts[name] === null && !facts.notPossible(`light.${name}`),
      )
      if (missing.length === 0) return null
      return {
        wheels: [],
        because: () => missing.map((name) => ({ field: `light.${name}`, code: 'not-seen-yet' })),
      }
    },
  },
  'retry-silent-wheel': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['wheels.*.answer', 'wheels.*.tries', 'wheels.*.valve', 'vehicle.sensorMounting'],
    when: 'A wheel was silent at fewer than two spaced tries, or has a plain stem and was not tried twice.',
    means: 'Not yet a silent sensor, and not yet a wheel without one.',
    offers: [],
    holds: ['wheel-removal'],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) =>
          wheel.sensor.tries < thresholds.spacedTries &&
          (wheel.sensor.silent || plainAndUnasked(facts, wheel.given)) &&
          !facts.notPossible(`wheels.${wheel.position}.answer`),
        (wheels) => ({
          because: () =>
            groundsOf(wheels, 'tries', (wheel) =>
              wheel.sensor.silent
                ? { code: 'silent-not-asked-twice' }
                : { code: 'plain-stem-not-asked-twice' },
            ),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
  'cross-read-suspected': {
    kind: 'ask',
    confidence: 'likely',
    reads: ['wheels.*.id', 'wheels.*.tries'],
    when: 'One ID was read at two positions, and not with two spaced reads at each.',
    means: 'Probably one sensor was heard twice.',
    offers: [],
    holds: ['relearn'],
    find: (facts) => {
      if (!facts.sensing) return null
      const wheels = wheelsSharingAnId(facts.wheels, 'not-read-twice')
      if (wheels.length === 0) return null
      return {
        wheels: positionsOf(wheels),
        because: () => groundsOf(wheels, 'id', () => ({ code: 'same-id-elsewhere' })),
        figures: () => wheelFigures(wheels),
      }
    },
  },
  'placard-unverified': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['vehicle.placard.front', 'vehicle.placard.rear', 'vehicle.placard.verified'],
    when: 'The door label is missing, or its figures are not verified.',
    means: 'No pressure can be judged or set; a stop is still reported.',
    offers: [],
    holds: ['pressure-setting'],
    find: (facts) =>
      facts.placardVerified
        ? null
        : {
            wheels: [],
            because: () => [{ field: 'vehicle.placard.verified', code: 'label-not-verified' }],
          },
  },
  'system-unknown': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['vehicle.system'],
    when: 'It is not known whether the vehicle has sensors in its wheels.',
    means: 'A missing sensor and a system without sensors look alike.',
    offers: [],
    holds: [],
    find: (facts) =>
      facts.system === 'unknown'
        ? { wheels: [], because: () => [{ field: 'vehicle.system', code: 'not-known' }] }
        : null,
  },
  'reading-impossible': {
    kind: 'ask',
    confidence: 'firm',
    reads: [
      'wheels.*.gauge',
      'vehicle.loadClass.front',
      'vehicle.loadClass.rear',
      'vehicle.loadClass.spare',
      'surroundings.outdoor',
      'surroundings.tireTemperature',
      'surroundings.overnightLow',
      'surroundings.lastSet.temperature',
    ],
    when: 'A gauge value is under 0, over 100 psi on a passenger tire or over 150 on any; or a typed temperature is outside -40 to 257 °F.',
    means: 'A typing error or the wrong unit.',
    offers: [],
    holds: ['pressure-setting'],
    find: impossibleReadings,
  },
  'reading-stale': {
    kind: 'ask',
    confidence: 'firm',
    reads: ['events.moved-since-reading', 'events.air-added'],
    when: 'Wheels were moved or air was added after the reading.',
    means: 'The gauge value is no longer what this wheel had on arrival.',
    offers: [],
    holds: ['pressure-setting'],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) => wheel.stale,
        (wheels) => ({
          because: () => groundsOf(wheels, 'gauge', () => ({ code: 'read-before-change' })),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
} satisfies Partial<RuleBook>

/** A band-mounted sensor shows nothing at the stem, so a plain stem says nothing there. */
const plainAndUnasked = (facts: Facts, given: Facts['road'][number]['given']): boolean =>
  given.valve === 'plain' && given.answer !== 'answered' && facts.evidence.vehicle?.sensorMounting !== 'band'

function impossibleReadings(facts: Facts): Match | null {
  const wheels = facts.wheels.filter((wheel) => wheel.gaugeImpossible)
  const fields = facts.place.impossibleFields
  if (wheels.length === 0 && fields.length === 0) return null
  return {
    wheels: positionsOf(wheels),
    because: () => [
      ...groundsOf(wheels, 'gauge', () => ({ code: 'no-tire-holds-that' })),
      ...fields.map((field) => ground(field, { code: 'temperature-out-of-range' })),
    ],
    figures: () => wheelFigures(wheels),
  }
}
