import { above, atOrAbove } from '../../pressure/threshold.ts'
import { kilopascalsApart } from '../../units/measured.ts'
import { kilopascalsOver } from '../../units/pressure-difference.ts'
import type { Figures } from '../diagnosis.ts'
import type { Facts } from '../facts/facts.ts'
import { isHotCorner } from '../facts/hot-corner.ts'
import { type Loss, lossesOf } from '../facts/loss.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, onWheels, type RuleBook, type Shown, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { coldFigures, coldOf, pressureFields } from './pressure-words.ts'

/** Air that is leaving a tire. */
export const airLossRules = {
  'slow-loss-suspected': {
    kind: 'also',
    confidence: 'likely',
    reads: pressureFields,
    when: 'A tire is 3 psi or more under its label figure, and 3 psi under its axle mate or lacks 3 psi more than two other tires; and it is not low.',
    means: 'It probably loses air slowly.',
    offers: ['leak-find'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) => isUnderItsMates(facts, wheel),
        () => ({
          because: (wheels) =>
            groundsOf(wheels, 'gauge', (wheel) => ({
              code: 'cold-under-mate',
              values: coldOf(facts, wheel),
            })),
          figures: (wheels) => coldFigures(facts, wheels),
        }),
      ),
  },
  'slow-leak': {
    kind: 'also',
    confidence: 'likely',
    reads: [...pressureFields, 'history.earlierReadings'],
    when: 'Since a reading at least 12 hours old a tire lost more than two gauges and two temperatures can be off by, and more than 0.07 psi a day, both readings brought to 68 °F and one altitude; four alike are weather or the gauge.',
    means: 'It loses air faster than tires do; two gauges and two temperatures do not explain it.',
    offers: ['leak-find'],
    holds: [],
    find: (facts) => {
      const losses = lossesOf(facts)
      const lossOf = (wheel: WheelFacts) => losses.get(wheel) ?? null
      return onWheels(
        facts.wheels,
        (wheel) => lossOf(wheel) !== null,
        (wheels) => {
          const found = wheels.flatMap((wheel) => lossOf(wheel) ?? [])
          return {
            confidence: found.some((loss) => above(loss.drop, thresholds.leakDropFirm)) ? 'firm' : 'likely',
            because: (wheels) =>
              wheels.flatMap((wheel) => {
                const loss = lossOf(wheel)
                return loss === null ? [] : groundsOf([wheel], 'gauge', () => lossReason(facts, loss))
              }),
            figures: (wheels) => leakFigures(facts, wheels, lossOf),
          }
        },
      )
    },
  },
} satisfies Partial<RuleBook>

const lossReason = ({ display }: Facts, { drop, days, perDay }: Loss): Shown => ({
  code: 'lost-since-reading',
  values: {
    drop: display.pressure(drop),
    days,
    perDay: display.pressure(perDay),
    unit: display.unit,
  },
})

const isUnderItsMates = (facts: Facts, wheel: WheelFacts): boolean => {
  const { cold, deficit } = wheel
  if (cold === null || deficit === null || !atOrAbove(deficit, thresholds.slowLossDeficit)) return false
  const mate = mateOf(facts, wheel)?.cold ?? null
  if (mate !== null && atOrAbove(kilopascalsOver(mate, cold), thresholds.slowLossUnderMate)) return true
  // Both tires of an axle can leak: then they show against the others.
  const lackLess = facts.road.filter(
    (other) =>
      other !== wheel &&
      !other.carriesSpare &&
      other.deficit !== null &&
      atOrAbove(kilopascalsApart(deficit - other.deficit), thresholds.slowLossDeficit),
  )
  return lackLess.length >= 2
}

/** The other wheel of the axle, unless a temporary spare is mounted there or a dragging brake heats it. */
const mateOf = (facts: Facts, wheel: WheelFacts): WheelFacts | null => {
  const mates = { LF: 'RF', RF: 'LF', RR: 'LR', LR: 'RR', SP: 'SP' } as const
  const mate = facts.wheel(mates[wheel.position])
  return mate === undefined || mate.carriesSpare || isHotCorner(facts.road, mate) ? null : mate
}

const leakFigures = (
  facts: Facts,
  wheels: readonly WheelFacts[],
  lossOf: (wheel: WheelFacts) => Loss | null,
): Figures => {
  const worst = wheels
    .flatMap((wheel) => lossOf(wheel) ?? [])
    .sort((one, other) => other.perDay - one.perDay)[0]
  if (worst === undefined) return wheelFigures(wheels)
  return {
    ...wheelFigures(wheels),
    perDay: facts.display.pressure(worst.perDay),
    drop: facts.display.pressure(worst.drop),
    unit: facts.display.unit,
    ...timeLeft(worst.daysToLight),
  }
}

const timeLeft = (days: number | null): Figures => {
  if (days === null) return { form: 'low-already' }
  return days === 1 ? { form: 'within-a-day' } : { days }
}
