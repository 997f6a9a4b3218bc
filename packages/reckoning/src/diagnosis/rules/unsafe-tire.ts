import type { InsideTire } from '../../evidence/evidence-schema.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import type { UnsafeDamage } from '../reason-codes.ts'
import { type Ground, groundsOf, type Match, positionsOf, type RuleBody, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'

/** A tire that can fail suddenly, outside or inside, or that is worn out. */
export const unsafeTireRule: RuleBody = {
  kind: 'stop',
  stop: 'do-not-drive',
  confidence: 'firm',
  reads: ['wheels.*.tireDamage', 'wheels.*.treadDepth32nds', 'wheels.*.insideTire'],
  when: 'A tire shows cord, a bulge or a cut to the cord; from inside, damage from running low, cord or separation; or it has 2/32 in of tread or less.',
  means:
    'It can fail suddenly, or grips poorly in rain. A stowed spare is not fitted; it keeps nothing off the road.',
  offers: ['tire'],
  holds: ['road', 'hand-back'],
  find: unsafeTires,
}

const unsafeDamage = ['bulge', 'cord-showing', 'cut-to-cord'] as const satisfies readonly UnsafeDamage[]

const damageOf = ({ given }: WheelFacts) =>
  unsafeDamage.filter((damage) => given.tireDamage?.includes(damage))

/** What was found inside a tire that must not be driven on; null where it was not looked at, or is sound. */
const insideDamage = ({ given }: WheelFacts): Exclude<InsideTire, 'sound'> | null =>
  given.insideTire === null || given.insideTire === undefined || given.insideTire === 'sound'
    ? null
    : given.insideTire

/** At the wear bars. */
const isWornOut = ({ given }: WheelFacts): boolean =>
  typeof given.treadDepth32nds === 'number' && given.treadDepth32nds <= thresholds.wornOut32nds

function unsafeTires(facts: Facts): Match | null {
  const outside = facts.wheels.filter((wheel) => damageOf(wheel).length > 0)
  const inside = facts.wheels.filter((wheel) => insideDamage(wheel) !== null)
  const worn = facts.wheels.filter(isWornOut)
  const damaged = facts.wheels.filter((wheel) => outside.includes(wheel) || inside.includes(wheel))
  const wheels = facts.wheels.filter((wheel) => damaged.includes(wheel) || worn.includes(wheel))
  if (wheels.length === 0) return null
  const isOnRoad = wheels.some(({ road }) => road)
  const isDriving = damaged.some(({ road }) => road)
  return {
    wheels: positionsOf(wheels),
    ...(isDriving ? {} : { stop: 'repair-before-release' as const }),
    holds: isOnRoad ? ['road', 'hand-back'] : [],
    because: (): Ground[] => [
      ...groundsOf(outside, 'tireDamage', (wheel) => ({
        code: 'tire-damaged',
        values: { damage: damageOf(wheel) },
      })),
      ...groundsOf(inside, 'insideTire', () => ({ code: 'damaged-inside' })),
      ...groundsOf(worn, 'treadDepth32nds', () => ({ code: 'tread-worn-out' })),
    ],
    figures: () => unsafeFigures(isDriving ? damaged.filter(({ road }) => road) : damaged, worn),
  }
}

const unsafeFigures = (damaged: readonly WheelFacts[], worn: readonly WheelFacts[]) => {
  const [first] = damaged.flatMap((wheel) => [...damageOf(wheel), insideDamage(wheel) ?? []].flat())
  if (first !== undefined)
    return damaged.some(({ road }) => road)
      ? { ...wheelFigures(damaged), form: first }
      : { ...wheelFigures(damaged), form: 'stowed', damage: first }
  return {
    ...wheelFigures(worn),
    form: 'worn',
    tread: Math.min(...worn.map(({ given }) => given.treadDepth32nds ?? 0)),
  }
}
