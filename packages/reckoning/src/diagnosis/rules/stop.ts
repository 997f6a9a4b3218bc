import type { Facts } from '../facts/facts.ts'
import { excessOver, isHotCorner } from '../facts/hot-corner.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { ground, groundsOf, onWheels, positionsOf, type RuleBook, wheelFigures } from '../rule.ts'
import { notRepairableRule } from './puncture.ts'
import { runLowRule } from './run-low.ts'
import { unsafeTireRule } from './unsafe-tire.ts'

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
    when: 'One sensor is 30 °F (17 °C) or more over the mean of the others, two at least; likely after driving, possible otherwise.',
    means: 'A brake or a wheel bearing may drag there.',
    offers: ['outside-work'],
    holds: ['road', 'pressure-setting'],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) => isHotCorner(facts.road, wheel),
        (wheels) => ({
          confidence: facts.place.driven ? 'likely' : 'possible',
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
      ),
  },
  'stem-leaking': {
    kind: 'stop',
    stop: 'repair-before-release',
    confidence: 'firm',
    reads: ['wheels.*.stem', 'wheels.*.valve'],
    when: 'A valve stem is cracked or leaks.',
    means: 'It may let go without warning.',
    offers: ['stem'],
    holds: ['road', 'hand-back'],
    find: (facts) =>
      onWheels(
        facts.wheels,
        (wheel) => wheel.given.stem === 'cracked' || wheel.given.stem === 'leaks',
        (wheels) => ({
          ...(wheels.some(({ road }) => road) ? {} : { holds: [] }),
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
  'tire-unsafe': unsafeTireRule,
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
  'puncture-not-repairable': notRepairableRule,
} satisfies Partial<RuleBook>

const hasSensorValve = (wheel: WheelFacts): boolean =>
  wheel.given.valve === 'snap-in' || wheel.given.valve === 'clamp-in'

const degreesOver = (facts: Facts, wheel: WheelFacts): number =>
  facts.display.degrees(excessOver(facts.road, wheel) ?? 0)
