import type { EventKind } from '../../evidence/evidence-schema.ts'
import type { Facts } from '../facts/facts.ts'
import type { Match, RuleBook } from '../rule.ts'

const addedDevices = ['dash-cam-added', 'charger-added', 'window-film-added'] as const

/** Radio and place. Each rule depends on its event alone, whatever the light does. */
export const surroundingsRules = {
  'one-place-only': {
    kind: 'also',
    confidence: 'likely',
    reads: ['events.one-place-only'],
    when: 'It happens in one place only.',
    means: 'A transmitter there.',
    offers: [],
    holds: [],
    find: (facts) => eventMatch(facts, ['one-place-only'], 'happens-there-only'),
  },
  'interference-suspected': {
    kind: 'also',
    confidence: 'possible',
    concludes: true,
    reads: addedDevices.map((kind) => `events.${kind}`),
    when: 'A dash-cam, charger or window film was added.',
    means: 'It may drown out the sensors.',
    offers: [],
    holds: [],
    find: (facts, prior) => {
      const match = eventMatch(facts, addedDevices, 'added-to-vehicle')
      if (match === null) return null
      return { ...match, confidence: prior.has('malfunction-unexplained') ? 'likely' : 'possible' }
    },
  },
  'aftermarket-wheels': {
    kind: 'also',
    confidence: 'possible',
    reads: ['events.aftermarket-wheels'],
    when: 'Other wheels than the maker’s are fitted.',
    means: 'Shielding, angle, depth or seat may not suit the sensor.',
    offers: [],
    holds: [],
    find: (facts) => eventMatch(facts, ['aftermarket-wheels'], 'fitted'),
  },
  'snow-or-chains': {
    kind: 'also',
    confidence: 'possible',
    reads: ['events.chains', 'events.packed-snow'],
    when: 'Chains are on, or snow or ice is packed in the wheels.',
    means: 'They may shield the sensors for a while.',
    offers: [],
    holds: [],
    find: (facts) => eventMatch(facts, ['chains', 'packed-snow'], 'at-the-time'),
  },
} satisfies Partial<RuleBook>

type EventReason = 'happens-there-only' | 'added-to-vehicle' | 'fitted' | 'at-the-time'

const eventMatch = (facts: Facts, kinds: readonly EventKind[], code: EventReason): Match | null => {
  const happened = kinds.filter((kind) => facts.events.happened(kind))
  if (happened.length === 0) return null
  return { wheels: [], because: () => happened.map((kind) => ({ field: `events.${kind}`, code })) }
}
