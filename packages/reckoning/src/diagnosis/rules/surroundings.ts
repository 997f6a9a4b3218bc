import type { EventKind } from '../../evidence/evidence-schema.ts'
import type { Facts } from '../facts/facts.ts'
import type { Match, RuleBook } from '../rule.ts'

const addedDevices = ['dash-cam-added', 'charger-added', 'window-film-added'] as const

/** Radio and place. Each stands on its event alone, whatever the light does. */
export const surroundingsRules = {
  'one-place-only': {
    kind: 'also',
    confidence: 'likely',
    reads: ['events.one-place-only'],
    when: 'It happens in one place only.',
    means: 'A transmitter there.',
    next: 'No work; note the place.',
    offers: [],
    holds: [],
    find: (facts) => eventMatch(facts, ['one-place-only'], 'it happens there only'),
  },
  'interference-suspected': {
    kind: 'also',
    confidence: 'possible',
    concludes: true,
    reads: addedDevices.map((kind) => `events.${kind}`),
    when: 'A dash-cam, charger or window film was added.',
    means: 'It may drown out the sensors.',
    next: 'Take it out, drive, compare.',
    offers: [],
    holds: [],
    find: (facts, prior) => {
      const match = eventMatch(facts, addedDevices, 'added to the vehicle')
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
    next: 'Check that the sensor lies in the drop center and that the hole fits its stem.',
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
    next: 'Clear the wheels and test again.',
    offers: [],
    holds: [],
    find: (facts) => eventMatch(facts, ['chains', 'packed-snow'], 'at the time'),
  },
} satisfies Partial<RuleBook>

const eventMatch = (facts: Facts, kinds: readonly EventKind[], says: string): Match | null => {
  const happened = kinds.filter((kind) => facts.events.happened(kind))
  if (happened.length === 0) return null
  return { wheels: [], because: () => happened.map((kind) => ({ field: `events.${kind}`, says })) }
}
