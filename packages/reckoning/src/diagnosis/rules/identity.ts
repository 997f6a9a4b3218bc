import { idKey } from '../../sensor/sensor-id.ts'
import type { Facts } from '../facts/facts.ts'
import {
  isKnownElsewhere,
  isOtherWheelSet,
  isStoredUnheard,
  isUnknownToVehicle,
  movedPositions,
} from '../facts/identity.ts'
import { frequencyFits } from '../facts/sensing.ts'
import { wheelsSharingAnId } from '../facts/shared-ids.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, type Match, onWheels, positionsOf, type RuleBook, wheelFigures } from '../rule.ts'

const idFields = [
  'wheels.*.answer',
  'wheels.*.id',
  'controlModule.state',
  'controlModule.notation',
  'controlModule.ids.*',
] as const

/** Which sensor is where, and whether the vehicle knows it. */
export const identityRules = {
  'id-not-stored': {
    kind: 'also',
    confidence: 'firm',
    reads: idFields,
    when: 'A sensor answers with an ID that the vehicle does not hold.',
    means: 'The vehicle was never made to learn it.',
    offers: ['relearn'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) => isUnknownToVehicle(facts, wheel),
        () => ({
          because: (wheels) => groundsOf(wheels, 'id', () => ({ code: 'not-stored' })),
          figures: (wheels) => wheelFigures(wheels),
        }),
      ),
  },
  'stored-id-unheard': {
    kind: 'also',
    confidence: 'firm',
    reads: idFields,
    when: 'The vehicle holds an ID that no wheel sent, although the wheel at its position answers.',
    means: "That sensor is no longer on this vehicle; evidence beside the finding on the wheel's own sensor.",
    offers: [],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => isStoredUnheard(facts, wheel),
        () => ({
          because: (wheels) =>
            wheels.map((wheel) => ({
              field: `controlModule.ids.${wheel.position}`,
              code: 'stored-unheard',
            })),
          figures: (wheels) => wheelFigures(wheels),
        }),
      ),
  },
  'other-wheel-set': {
    kind: 'also',
    confidence: 'firm',
    reads: idFields,
    when: 'All four road wheels answer, and the vehicle holds none of their IDs.',
    means: 'Another set of wheels is on the vehicle.',
    offers: ['relearn'],
    holds: [],
    find: (facts) =>
      isOtherWheelSet(facts)
        ? {
            wheels: positionsOf(facts.road),
            because: () => groundsOf(facts.road, 'id', () => ({ code: 'not-stored' })),
            figures: () => wheelFigures(facts.road),
          }
        : null,
  },
  'rotated-without-relearn': {
    kind: 'also',
    confidence: 'firm',
    reads: [...idFields, 'vehicle.pressureDisplay', 'vehicle.placard.*', 'light.behavior'],
    when: 'A wheel sends an ID that the vehicle holds for another position, also while a third wheel is silent.',
    means: 'Wheels were moved without a relearn; the vehicle names the wrong tire.',
    offers: ['relearn'],
    holds: [],
    find: (facts) => rotated(facts, facts.road),
  },
  'id-duplicated': {
    kind: 'also',
    confidence: 'firm',
    reads: ['wheels.*.id', 'wheels.*.tries'],
    when: 'Two wheels send one ID, each at two spaced reads or more.',
    means: 'One ID was copied into two sensors.',
    offers: ['reprogram', 'relearn'],
    holds: [],
    find: (facts) => {
      if (!facts.sensing) return null
      const wheels = wheelsSharingAnId(facts.wheels, 'read-twice')
      if (wheels.length === 0) return null
      return {
        wheels: positionsOf(wheels),
        because: (wheels) => groundsOf(wheels, 'id', () => ({ code: 'same-id-elsewhere-read-twice' })),
        figures: (wheels) => wheelFigures(wheels),
      }
    },
  },
  'wheel-from-another-vehicle': {
    kind: 'also',
    confidence: 'likely',
    reads: [
      ...idFields,
      'history.idsOnOtherVehicles',
      'wheels.*.frequencyMHz',
      'vehicle.sensorFrequencyMHz',
      'events.used-wheel',
    ],
    when: "An ID unknown to the vehicle is on another vehicle's record here, or comes on the wrong frequency with a used wheel.",
    means: 'The wheel comes from another vehicle.',
    offers: [],
    holds: [],
    find: (facts) => {
      const elsewhere = idsElsewhere(facts)
      return onWheels(
        facts.monitored,
        (wheel) =>
          isUnknownToVehicle(facts, wheel) &&
          (isKnownElsewhere(facts, wheel, elsewhere) ||
            (frequencyFits(facts, wheel) === false && facts.events.happened('used-wheel', wheel.position))),
        (wheels) => ({
          because: () =>
            groundsOf(wheels, 'id', (wheel) =>
              isKnownElsewhere(facts, wheel, elsewhere)
                ? { code: 'unknown-here-known-elsewhere' }
                : { code: 'unknown-other-frequency-used-wheel' },
            ),
          figures: () => wheelFigures(wheels),
        }),
      )
    },
  },
  'id-known-elsewhere': {
    kind: 'also',
    confidence: 'firm',
    reads: ['wheels.*.id', 'history.idsOnOtherVehicles'],
    when: "A sensor's ID is on another vehicle's record in this shop.",
    means: 'Sets may have been swapped.',
    offers: [],
    holds: [],
    find: (facts) => {
      const elsewhere = idsElsewhere(facts)
      return onWheels(
        facts.wheels,
        (wheel) => isKnownElsewhere(facts, wheel, elsewhere),
        (wheels) => ({
          because: () => groundsOf(wheels, 'id', () => ({ code: 'on-another-vehicle' })),
          figures: () => wheelFigures(wheels),
        }),
      )
    },
  },
  'id-notation-differs': {
    kind: 'note',
    confidence: 'firm',
    reads: idFields,
    when: 'Wheel IDs and stored IDs look different, and are the same numbers in another notation.',
    means: 'No fault.',
    offers: [],
    holds: [],
    find: notationDiffers,
  },
  'spare-rotated-without-relearn': {
    kind: 'also',
    confidence: 'firm',
    reads: idFields,
    when: "The spare's ID and a road wheel's are stored in each other's place.",
    means: 'A five-wheel rotation was not learned.',
    offers: ['relearn'],
    holds: [],
    find: (facts) => {
      const match = rotated(facts, facts.wheels)
      return match?.wheels.includes('SP') ? match : null
    },
  },
} satisfies Partial<RuleBook>

const idsElsewhere = (facts: Facts): ReadonlySet<string> =>
  new Set((facts.evidence.history?.idsOnOtherVehicles ?? []).map((id) => idKey(id, 'hex')))

const rotated = (facts: Facts, among: readonly WheelFacts[]): Match | null => {
  const moved = movedPositions(facts, among)
  if (moved.length === 0) return null
  return {
    wheels: moved,
    kind: changesNothingNow(facts) ? 'note' : 'also',
    because: (wheels) =>
      wheels.map((wheel) => ({
        field: `controlModule.ids.${wheel.position}`,
        code: 'stored-here-heard-elsewhere',
      })),
    figures: wheelFigures,
  }
}

/** Equal label figures, no display and no light: the vehicle shows nothing wrong today. */
const changesNothingNow = (facts: Facts): boolean => {
  const placard = facts.evidence.vehicle?.placard
  return (
    facts.behavior === 'off' &&
    facts.evidence.vehicle?.pressureDisplay === false &&
    typeof placard?.front === 'number' &&
    placard.front === placard.rear
  )
}

function notationDiffers(facts: Facts): Match | null {
  if (!facts.sensing || !facts.stored.decimal) return null
  const pairs = facts.wheels.filter(
    (wheel) => wheel.sensor.idKey !== null && facts.stored.keys[wheel.position] !== null,
  )
  const equal = pairs.every((wheel) => wheel.sensor.idKey === facts.stored.keys[wheel.position])
  if (pairs.length === 0 || !equal) return null
  return {
    wheels: [],
    because: () =>
      pairs.map((wheel) => ({
        field: `controlModule.ids.${wheel.position}`,
        code: 'same-in-hexadecimal',
        values: { id: facts.stored.keys[wheel.position] ?? '' },
      })),
  }
}
