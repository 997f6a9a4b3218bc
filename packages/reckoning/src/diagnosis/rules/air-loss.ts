import { above, atOrAbove } from '../../pressure/threshold.ts'
import { kilopascalsOver } from '../../units/pressure-difference.ts'
import type { Figures } from '../diagnosis.ts'
import type { Facts } from '../facts/facts.ts'
import { type Loss, steepestLoss } from '../facts/loss.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, onWheels, type RuleBook, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { coldFigures, coldWords, pressureFields } from './pressure-words.ts'

/** Air that is leaving a tire. */
export const airLossRules = {
  'slow-loss-suspected': {
    kind: 'also',
    confidence: 'likely',
    reads: pressureFields,
    when: 'A tire is 3 psi or more under its axle mate and under its label figure, and not low.',
    means: 'It probably loses air slowly.',
    next: 'Check tread, stem, core and bead for a leak.',
    offers: ['leak-find'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) => {
          const mate = mateOf(facts, wheel)
          return (
            wheel.cold !== null &&
            wheel.deficit !== null &&
            mate !== null &&
            mate.cold !== null &&
            atOrAbove(kilopascalsOver(mate.cold, wheel.cold), thresholds.slowLossUnderMate) &&
            atOrAbove(wheel.deficit, thresholds.slowLossDeficit)
          )
        },
        () => ({
          because: (wheels) =>
            groundsOf(
              wheels,
              'gauge',
              (wheel) => `${coldWords(facts, wheel)}, 3 psi or more under its axle mate`,
            ),
          figures: (wheels) => coldFigures(facts, wheels),
        }),
      ),
  },
  'slow-leak': {
    kind: 'also',
    confidence: 'likely',
    reads: [...pressureFields, 'history.earlierReadings'],
    when: 'Since an earlier reading a tire lost more than 1.6 psi, and more than 0.07 psi a day, both readings brought to 68 °F.',
    means: 'It loses air faster than tires do; two gauges and two temperatures do not explain it.',
    next: 'Find the leak: tread, stem, core, bead, wheel.',
    offers: ['leak-find'],
    holds: [],
    find: (facts) => {
      const lossOf = (wheel: WheelFacts) => (wheel.label === null ? null : steepestLoss(facts, wheel))
      return onWheels(
        facts.wheels,
        (wheel) => lossOf(wheel) !== null,
        (wheels) => {
          const losses = wheels.flatMap((wheel) => lossOf(wheel) ?? [])
          return {
            confidence: losses.some((loss) => above(loss.drop, thresholds.leakDropFirm)) ? 'firm' : 'likely',
            because: (wheels) =>
              groundsOf(wheels, 'gauge', (wheel) => {
                const loss = lossOf(wheel)
                return loss === null
                  ? ''
                  : `${facts.shown.pressure(loss.drop)} lost in ${loss.days} days, ${facts.shown.pressure(loss.perDay)} a day, weather taken out`
              }),
            figures: (wheels) => leakFigures(facts, wheels, lossOf),
          }
        },
      )
    },
  },
} satisfies Partial<RuleBook>

/** The other wheel of the axle, unless a temporary spare stands there. */
const mateOf = (facts: Facts, wheel: WheelFacts): WheelFacts | null => {
  const mates = { LF: 'RF', RF: 'LF', RR: 'LR', LR: 'RR', SP: 'SP' } as const
  const mate = facts.wheel(mates[wheel.position])
  return mate === undefined || mate.carriesSpare ? null : mate
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
    perDay: facts.shown.pressureNumber(worst.perDay),
    drop: facts.shown.pressureNumber(worst.drop),
    unit: facts.shown.unit,
    ...timeLeft(worst.daysToLight),
  }
}

const timeLeft = (days: number | null): Figures => {
  if (days === null) return { form: 'low-already' }
  return days === 1 ? { form: 'within-a-day' } : { days }
}
