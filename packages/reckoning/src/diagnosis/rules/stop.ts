import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import type { UnsafeDamage } from '../reason-codes.ts'
import {
  type Ground,
  ground,
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
          ...groundsOf(seen, 'sealantSeen', () => ({ code: 'sealant-seen' })),
          ...(reported.length > 0 ? [ground('events.sealant', { code: 'sealant-reported' })] : []),
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
    offers: ['outside-work'],
    holds: ['road', 'pressure-setting'],
    find: (facts) => {
      if (!facts.place.driven) return null
      return onWheels(
        facts.road,
        (wheel) => (excessOver(facts.road, wheel) ?? 0) >= thresholds.hotCornerExcess - 0.01,
        (wheels) => ({
          because: () =>
            groundsOf(wheels, 'sensorTemperature', (wheel) => ({
              code: 'hotter-than-others',
              values: {
                degrees: degreesOver(facts, wheel),
                temperatureUnit: facts.display.temperatureUnit,
              },
            })),
          figures: () => ({
            ...wheelFigures(wheels),
            degrees: Math.max(...wheels.map((wheel) => degreesOver(facts, wheel))),
            temperatureUnit: facts.display.temperatureUnit,
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
    offers: ['stem'],
    holds: ['hand-back'],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => wheel.given.stem === 'cracked' || wheel.given.stem === 'leaks',
        (wheels) => ({
          offers: wheels.some((wheel) => hasSensorValve(wheel)) ? ['stem', 'service-kit'] : ['stem'],
          because: () =>
            groundsOf(wheels, 'stem', (wheel) => ({
              code: wheel.given.stem === 'leaks' ? 'stem-leaks' : 'stem-cracked',
            })),
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
    offers: ['fastener-repair'],
    holds: ['road', 'hand-back'],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => (wheel.given.fastenerDamage ?? []).length > 0,
        (wheels) => ({
          because: () =>
            groundsOf(wheels, 'fastenerDamage', (wheel) => ({
              code: 'fasteners-damaged',
              values: { damage: [...(wheel.given.fastenerDamage ?? [])] },
            })),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
} satisfies Partial<RuleBook>

const hasSensorValve = (wheel: WheelFacts): boolean =>
  wheel.given.valve === 'snap-in' || wheel.given.valve === 'clamp-in'

/** Kelvin over the mean of the other road wheels; null with fewer than two of them to compare with. */
const excessOver = (road: readonly WheelFacts[], wheel: WheelFacts): number | null => {
  const others = road.flatMap((other) => (other === wheel ? [] : (other.sensor.temperature ?? [])))
  if (wheel.sensor.temperature === null || others.length < 2) return null
  return wheel.sensor.temperature - others.reduce((sum, one) => sum + one, 0) / others.length
}

const degreesOver = (facts: Facts, wheel: WheelFacts): number =>
  facts.display.degrees(excessOver(facts.road, wheel) ?? 0)

const unsafeDamage = ['bulge', 'cord-showing', 'cut-to-cord'] as const satisfies readonly UnsafeDamage[]

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
    ...groundsOf(damaged, 'tireDamage', (wheel) => ({
      code: 'tire-damaged',
      values: { damage: damageOf(wheel) },
    })),
    ...groundsOf(worn, 'treadDepth32nds', () => ({ code: 'tread-worn-out' })),
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
