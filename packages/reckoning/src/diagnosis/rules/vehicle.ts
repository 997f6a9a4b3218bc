import { inReadingOrder, type WheelPosition } from '../../wheels.ts'
import type { Facts } from '../facts/facts.ts'
import { allIdsStored } from '../facts/identity.ts'
import { pressuresRight } from '../facts/label-match.ts'
import { clearsLamp } from '../facts/lamp-threshold.ts'
import { frequencyFits, hasCode, hasReceiverFault } from '../facts/sensing.ts'
import { groundsOf, type Match, onWheels, type RuleBook, type Shown, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { pressureFields } from './pressure-words.ts'

/** Faults of the vehicle rather than of its wheels. */
export const vehicleRules = {
  'receiver-fault': {
    kind: 'also',
    confidence: 'likely',
    reads: ['controlModule.codes'],
    when: 'The vehicle stores a receiver or communication code.',
    means: 'The vehicle itself does not hear.',
    offers: ['outside-work'],
    holds: [],
    find: (facts) => {
      if (!hasReceiverFault(facts)) return null
      const codes = facts.codes.filter((code) => code.class === 'receiver' || code.class === 'communication')
      return {
        wheels: [],
        because: () => codes.map((code) => ({ field: 'controlModule.codes', ...codeReason(code) })),
      }
    },
  },
  'code-old-or-intermittent': {
    kind: 'also',
    confidence: 'possible',
    reads: ['controlModule.codes', 'wheels.*.answer', 'wheels.*.battery'],
    when: 'The vehicle stores a no-signal code for a wheel that answers now.',
    means: 'An old code, or a sensor that fails at times.',
    offers: [],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) => wheel.sensor.answered && hasCode(facts, 'no-signal', wheel),
        (wheels) => ({
          confidence: wheels.some((wheel) => wheel.sensor.battery === 'low') ? 'likely' : 'possible',
          because: () => groundsOf(wheels, 'answer', () => ({ code: 'answers-despite-code' })),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
  'control-module-blank': {
    kind: 'also',
    confidence: 'firm',
    reads: ['controlModule.state'],
    when: 'The vehicle holds no sensor IDs at all.',
    means: 'Its control module was renewed, or lost them.',
    offers: ['relearn'],
    holds: [],
    find: (facts) =>
      facts.sensing && facts.stored.state === 'blank'
        ? { wheels: [], because: () => [{ field: 'controlModule.state', code: 'no-ids-stored' }] }
        : null,
  },
  'learn-mode-open': {
    kind: 'also',
    confidence: 'likely',
    reads: ['light.behavior'],
    when: 'The light flashes without end.',
    means: 'A relearn was begun and not finished.',
    offers: ['relearn'],
    holds: [],
    find: (facts) =>
      facts.sensing && facts.behavior === 'flash-continuous'
        ? { wheels: [], because: () => [{ field: 'light.behavior', code: 'never-stops-flashing' }] }
        : null,
  },
  'telltale-dark': {
    kind: 'also',
    confidence: 'firm',
    reads: ['light.lampCheck', 'vehicle.system'],
    when: 'The warning light does not light at key-on.',
    means: 'The lamp failed or was disabled before arrival.',
    offers: ['outside-work'],
    holds: [],
    find: (facts) =>
      facts.lampCheck === 'dark' && facts.system !== 'none'
        ? {
            wheels: [],
            because: () => [{ field: 'light.lampCheck', code: 'dark-at-key-on' }],
          }
        : null,
  },
  'collision-corner': {
    kind: 'also',
    confidence: 'possible',
    concludes: true,
    reads: ['events.collision'],
    when: 'A corner that was struck is silent or comes and goes.',
    means: 'Bracket, wiring or antenna may be hurt too.',
    offers: [],
    holds: [],
    find: (facts, prior) => {
      const struck = facts.events
        .namedWheelsOf('collision')
        .filter((wheel) => prior.has('sensor-silent', wheel) || prior.has('code-old-or-intermittent', wheel))
      return struck.length === 0 ? null : cornerMatch(facts, struck)
    },
  },
  'not-driven-yet': {
    kind: 'note',
    confidence: 'firm',
    reads: [
      'events.serviced-today',
      'events.topped-up-before-arrival',
      'surroundings.minutesDriven',
      'vehicle.system',
      ...pressureFields,
      'light.behavior',
    ],
    when: 'Just serviced, or air put in before arrival and pressures right, and not yet driven 20 minutes.',
    means: 'The vehicle has not judged this yet.',
    offers: [],
    holds: [],
    find: (facts) => {
      if (!facts.sensing || facts.behavior === 'flash-continuous') return null
      if ((facts.place.minutesDriven ?? 0) >= thresholds.judgedAfterMinutes) return null
      const toppedUp =
        facts.system === 'direct' &&
        facts.events.happened('topped-up-before-arrival') &&
        pressuresRight(facts)
      const serviced = facts.events.happened('serviced-today')
      if (!serviced && !toppedUp) return null
      const kind = serviced ? 'serviced-today' : 'topped-up-before-arrival'
      return {
        wheels: [],
        because: () => [
          { field: `events.${kind}`, code: 'changed-just-now' },
          { field: 'surroundings.minutesDriven', code: 'not-driven-long-enough' },
        ],
      }
    },
  },
  'warning-unexplained': {
    kind: 'ask',
    confidence: 'possible',
    concludes: true,
    reads: ['light.behavior', ...pressureFields, 'wheels.*.sensorPressure'],
    when: 'The light is solid, nothing is left to check, every tire, as read and cold, and every sensor clears the warning point and its hold, and nothing else explains it.',
    means: 'The vehicle reports something that we cannot see.',
    offers: [],
    holds: [],
    find: (facts, prior) =>
      facts.behavior === 'solid' &&
      facts.system !== 'none' &&
      !prior.has('system-kind-contradicted') &&
      !prior.askOpen() &&
      !prior.explained() &&
      facts.road.every(
        (wheel) =>
          clearsLamp(wheel.judged, wheel) && clearsLamp(wheel.cold, wheel) && clearsLamp(wheel.seen, wheel),
      )
        ? {
            wheels: [],
            because: () => [{ field: 'light.behavior', code: 'solid-with-clear-tires' }],
          }
        : null,
  },
  'malfunction-unexplained': {
    kind: 'ask',
    confidence: 'possible',
    concludes: true,
    reads: [
      'light.behavior',
      'wheels.*.answer',
      'wheels.*.id',
      'wheels.*.frequencyMHz',
      'vehicle.sensorFrequencyMHz',
      'controlModule.*',
    ],
    when: 'The light flashes, nothing is left to check, every sensor answers on the right frequency with an ID that is stored, at whatever position, and nothing else explains it.',
    means: 'The vehicle does not hear what we hear.',
    offers: [],
    holds: [],
    find: (facts, prior) =>
      facts.behavior === 'flash-then-solid' &&
      !prior.askOpen() &&
      !prior.explained() &&
      facts.monitored.length > 0 &&
      facts.monitored.every((wheel) => frequencyFits(facts, wheel) === true) &&
      allIdsStored(facts)
        ? {
            wheels: [],
            because: () => [{ field: 'light.behavior', code: 'fault-with-matching-sensors' }],
          }
        : null,
  },
} satisfies Partial<RuleBook>

const codeReason = ({ class: codeClass, text }: Facts['codes'][number]): Shown =>
  text
    ? { code: 'code-stored-as', values: { class: codeClass, text } }
    : { code: 'code-stored', values: { class: codeClass } }

const cornerMatch = (facts: Facts, struck: readonly WheelPosition[]): Match => ({
  wheels: inReadingOrder(struck),
  because: () => [{ field: 'events.collision', code: 'corner-struck' }],
  figures: () => wheelFigures(facts.wheels.filter((wheel) => struck.includes(wheel.position))),
})
