import type { FastenerDamage, TireDamage } from '../../evidence/evidence-schema.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import {
  type Ground,
  groundsOf,
  type Match,
  onWheels,
  positionsOf,
  type RuleBook,
  wheelFigures,
} from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { runLowRule } from './run-low.ts'

/** What must not wait: computed from whatever is known, whatever else is still open. */
export const stopRules = {
  'run-low-damage-possible': runLowRule,
  'sealant-inside': {
    kind: 'stop',
    stop: 'do-not-open-the-tire',
    confidence: 'firm',
    reads: ['wheels.*.sealantSeen', 'events.sealant'],
    when: 'Tire sealant was reported or seen; on all road wheels until it is found.',
    means: 'The gas in the tire can burn, and the sensor may be glued up.',
    next: 'No flame, spark, hot work, plug or reamer. Let down and refill with air four times outdoors before the bead is broken; then clean and judge the sensor.',
    offers: ['sensor-clean'],
    holds: ['bead-break'],
    find: (facts) => {
      const seen = facts.wheels.filter((wheel) => wheel.given.sealantSeen === true)
      const named = facts.events.namedWheelsOf('sealant')
      const reported = facts.events.wheelsOf('sealant')
      const where = seen.length > 0 ? named : reported
      const wheels = facts.wheels.filter((wheel) => seen.includes(wheel) || where.includes(wheel.position))
      if (wheels.length === 0) return null
      return {
        wheels: positionsOf(wheels),
        because: () => [
          ...groundsOf(seen, 'sealantSeen', () => 'sealant was seen'),
          ...(reported.length > 0 ? [{ field: 'events.sealant', says: 'a can of sealant was used' }] : []),
        ],
        figures: () => wheelFigures(wheels),
      }
    },
  },
  'hot-corner': {
    kind: 'stop',
    stop: 'do-not-drive',
    confidence: 'likely',
    reads: ['surroundings.tires', 'wheels.*.sensorTemperature'],
    when: 'After driving, one sensor is 30 °F (17 °C) or more over the mean of the others.',
    means: 'A brake or a wheel bearing may drag there.',
    next: "Do not drive. Have that corner checked; do not set that tire's pressure hot.",
    offers: ['outside-work'],
    holds: ['road', 'pressure-setting'],
    find: (facts) => {
      if (!facts.place.driven) return null
      return onWheels(
        facts.road,
        (wheel) => (excessOver(facts.road, wheel) ?? 0) >= thresholds.hotCornerExcess - 0.01,
        (wheels) => ({
          because: () =>
            groundsOf(
              wheels,
              'sensorTemperature',
              (wheel) => `${excessShown(facts, wheel)} over the mean of the others`,
            ),
          figures: () => ({
            ...wheelFigures(wheels),
            degrees: Math.max(
              ...wheels.map((wheel) => facts.shown.degreesNumber(excessOver(facts.road, wheel) ?? 0)),
            ),
            temperatureUnit: facts.shown.temperatureUnit,
          }),
        }),
      )
    },
  },
  'stem-leaking': {
    kind: 'stop',
    stop: 'repair-before-release',
    confidence: 'firm',
    reads: ['wheels.*.stem', 'wheels.*.valve'],
    when: 'A valve stem is cracked or leaks.',
    means: 'It may let go without warning.',
    next: 'Do not pull or bend it. Renew the stem, or the sensor it belongs to, before release.',
    offers: ['stem'],
    holds: ['hand-back'],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => wheel.given.stem === 'cracked' || wheel.given.stem === 'leaks',
        (wheels) => ({
          offers: wheels.some((wheel) => hasSensorValve(wheel)) ? ['stem', 'service-kit'] : ['stem'],
          because: () =>
            groundsOf(wheels, 'stem', (wheel) => `the stem ${stemWords[wheel.given.stem ?? 'sound']}`),
          figures: () => ({
            ...wheelFigures(wheels),
            form: wheels.some((wheel) => wheel.given.stem === 'leaks') ? 'leaks' : 'cracked',
          }),
        }),
      ),
  },
  'tire-unsafe': {
    kind: 'stop',
    stop: 'do-not-drive',
    confidence: 'firm',
    reads: ['wheels.*.tireDamage', 'wheels.*.treadDepth32nds'],
    when: 'A tire shows cord, a bulge or a cut to the cord, or has 2/32 in of tread or less.',
    means: 'It can fail suddenly, or grips poorly in rain.',
    next: 'Cord, bulge or cut: do not drive. Worn out: replace before release, or record the refusal.',
    offers: ['tire'],
    holds: ['hand-back'],
    find: unsafeTires,
  },
  'wheel-not-secure': {
    kind: 'stop',
    stop: 'do-not-drive',
    confidence: 'firm',
    reads: ['wheels.*.fastenerDamage'],
    when: 'A stud or fastener is missing, broken or stripped, or sits in the wrong seat.',
    means: 'The wheel is not held as its maker requires.',
    next: "Do not drive. Repair it to the vehicle maker's instructions before release.",
    offers: ['fastener-repair'],
    holds: ['road', 'hand-back'],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => (wheel.given.fastenerDamage ?? []).length > 0,
        (wheels) => ({
          because: () =>
            groundsOf(wheels, 'fastenerDamage', (wheel) =>
              (wheel.given.fastenerDamage ?? []).map((damage) => fastenerWords[damage]).join(', '),
            ),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
} satisfies Partial<RuleBook>

const stemWords = {
  sound: 'is sound',
  corroded: 'is corroded',
  cracked: 'is cracked',
  leaks: 'leaks',
} as const

const fastenerWords: Readonly<Record<FastenerDamage, string>> = {
  'stud-missing': 'a stud is missing',
  'stud-broken': 'a stud is broken',
  'fastener-missing': 'a nut or bolt is missing',
  'thread-stripped': 'a thread is stripped',
  'seat-wrong': 'a fastener does not fit its seat',
}

const hasSensorValve = (wheel: WheelFacts): boolean =>
  wheel.given.valve === 'snap-in' || wheel.given.valve === 'clamp-in'

/** Kelvin over the mean of the other road wheels; null with fewer than two of them to compare with. */
const excessOver = (road: readonly WheelFacts[], wheel: WheelFacts): number | null => {
  const others = road.flatMap((other) => (other === wheel ? [] : (other.sensor.temperature ?? [])))
  if (wheel.sensor.temperature === null || others.length < 2) return null
  return wheel.sensor.temperature - others.reduce((sum, one) => sum + one, 0) / others.length
}

const excessShown = (facts: Facts, wheel: WheelFacts): string =>
  facts.shown.degrees(excessOver(facts.road, wheel) ?? 0)

const unsafeDamage = ['bulge', 'cord-showing', 'cut-to-cord'] as const satisfies readonly TireDamage[]

function unsafeTires(facts: Facts): Match | null {
  const damageOf = (wheel: WheelFacts) =>
    unsafeDamage.filter((damage) => wheel.given.tireDamage?.includes(damage))
  const isWorn = (wheel: WheelFacts) =>
    typeof wheel.given.treadDepth32nds === 'number' && wheel.given.treadDepth32nds <= thresholds.wornOut32nds
  const damaged = facts.wheels.filter((wheel) => damageOf(wheel).length > 0)
  const worn = facts.wheels.filter(isWorn)
  const wheels = facts.wheels.filter((wheel) => damaged.includes(wheel) || worn.includes(wheel))
  if (wheels.length === 0) return null
  const grounds = (): Ground[] => [
    ...groundsOf(damaged, 'tireDamage', (wheel) =>
      damageOf(wheel)
        .map((damage) => damageWords[damage])
        .join(', '),
    ),
    ...groundsOf(worn, 'treadDepth32nds', () => 'at or under the 2/32 in at which a tire is worn out'),
  ]
  if (damaged.length > 0) {
    return {
      wheels: positionsOf(wheels),
      holds: ['road', 'hand-back'],
      because: grounds,
      figures: () => ({ ...wheelFigures(damaged), form: damaged.flatMap(damageOf)[0] ?? 'bulge' }),
    }
  }
  return {
    wheels: positionsOf(wheels),
    stop: 'repair-before-release',
    because: grounds,
    figures: () => ({
      ...wheelFigures(worn),
      form: 'worn',
      tread: Math.min(...worn.map((wheel) => wheel.given.treadDepth32nds ?? 0)),
    }),
  }
}

const damageWords: Readonly<Record<(typeof unsafeDamage)[number], string>> = {
  bulge: 'a bulge',
  'cord-showing': 'cord showing',
  'cut-to-cord': 'a cut down to the cord',
}
