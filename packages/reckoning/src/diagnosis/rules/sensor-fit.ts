import type { Figures } from '../diagnosis.ts'
import type { Facts } from '../facts/facts.ts'
import { frequencyFits, hasCode, sheetFrequencyDoubtful } from '../facts/sensing.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, onWheels, type PriorFindings, type RuleBook, wheelFigures } from '../rule.ts'
import { thresholds } from '../thresholds.ts'

/** Whether the sensors suit the vehicle and will last. */
export const sensorFitRules = {
  'sensor-battery-low': {
    kind: 'also',
    confidence: 'firm',
    reads: ['wheels.*.battery', 'controlModule.codes'],
    when: 'A sensor says that its battery is low, or the vehicle stored that of a wheel that answers.',
    means: 'It is due soon; a weak cell fails first on cold mornings.',
    offers: ['sensor', 'service-kit', 'relearn'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) =>
          wheel.sensor.battery === 'low' || (wheel.sensor.answered && hasCode(facts, 'low-battery', wheel)),
        (wheels) => ({
          because: () => groundsOf(wheels, 'battery', () => ({ code: 'battery-low' })),
          figures: () => wheelFigures(wheels),
        }),
      ),
  },
  'frequency-wrong': {
    kind: 'also',
    confidence: 'firm',
    reads: ['wheels.*.frequencyMHz', 'vehicle.sensorFrequencyMHz', 'wheels.*.id', 'controlModule.*'],
    when: 'A sensor sends more than 1 MHz away from what the vehicle listens to; the 2.4 GHz band counts as one frequency.',
    means: 'The vehicle cannot hear it.',
    offers: ['sensor', 'service-kit', 'relearn'],
    holds: ['relearn'],
    find: (facts) =>
      sheetFrequencyDoubtful(facts)
        ? null
        : onWheels(
            facts.monitored,
            (wheel) => frequencyFits(facts, wheel) === false,
            (wheels) => ({
              because: () =>
                groundsOf(wheels, 'frequencyMHz', () => ({
                  code: 'vehicle-listens-on',
                  values: { megahertz: neededIn(facts) },
                })),
              figures: () => ({
                ...wheelFigures(wheels),
                has: wheels[0]?.sensor.frequencyMHz ?? 0,
                needs: neededIn(facts),
              }),
            }),
          ),
  },
  'protocol-wrong': {
    kind: 'also',
    confidence: 'likely',
    reads: ['wheels.*.learnRefusals', 'wheels.*.frequencyMHz', 'vehicle.sensorFrequencyMHz'],
    when: 'A sensor on the right frequency was refused at two relearns or more, while others were learned.',
    means: 'It is programmed for another vehicle.',
    offers: ['reprogram', 'sensor', 'service-kit', 'relearn'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.monitored,
        (wheel) =>
          frequencyFits(facts, wheel) === true &&
          (wheel.given.learnRefusals ?? 0) >= thresholds.learnRefusals,
        () => ({
          because: (wheels) =>
            groundsOf(wheels, 'learnRefusals', () => ({ code: 'refused-while-others-learned' })),
          figures: (wheels) => wheelFigures(wheels),
        }),
      ),
  },
  'stem-corroded': {
    kind: 'also',
    confidence: 'likely',
    reads: ['wheels.*.stem'],
    when: 'A stem is corroded and still holds air.',
    means: 'Stem or service kit is due.',
    offers: ['service-kit'],
    holds: [],
    find: (facts) =>
      facts.sensing
        ? onWheels(
            facts.wheels,
            (wheel) => wheel.given.stem === 'corroded',
            (wheels) => ({
              because: () => groundsOf(wheels, 'stem', () => ({ code: 'corroded' })),
              figures: () => wheelFigures(wheels),
            }),
          )
        : null,
  },
  'set-of-four-worth-offering': {
    kind: 'note',
    confidence: 'firm',
    concludes: true,
    reads: ['wheels.*.sensorAgeMonths'],
    when: 'All sensors are 96 months old or more, and one has failed or is low, or none answers.',
    means: 'A set is worth offering; one is enough to cure it.',
    offers: ['set-of-four'],
    holds: [],
    find: (facts, prior) =>
      allNearUsualLife(facts) &&
      [...failureCodes, 'no-wheel-answers' as const].some((code) => prior.has(code))
        ? {
            wheels: facts.road.map((wheel) => wheel.position),
            because: () =>
              groundsOf(facts.road, 'sensorAgeMonths', () => ({ code: 'near-end-of-battery-life' })),
            figures: () => failedCount(facts, prior),
          }
        : null,
  },
  'sensors-near-usual-life': {
    kind: 'note',
    confidence: 'firm',
    concludes: true,
    reads: ['wheels.*.sensorAgeMonths', 'wheels.*.answer'],
    when: 'All sensors are 96 months old or more, and all work.',
    means: 'Their batteries are near their usual life of 5 to 10 years.',
    offers: [],
    holds: [],
    find: (facts, prior) =>
      allNearUsualLife(facts) && allWork(facts.road, prior)
        ? {
            wheels: facts.road.map((wheel) => wheel.position),
            because: () =>
              groundsOf(facts.road, 'sensorAgeMonths', () => ({ code: 'near-usual-battery-life' })),
            figures: () => ({
              years: Math.floor(
                Math.min(...facts.road.map((wheel) => wheel.given.sensorAgeMonths ?? 0)) / 12,
              ),
            }),
          }
        : null,
  },
} satisfies Partial<RuleBook>

/** The frequency that the vehicle listens to, in MHz. */
const neededIn = ({ evidence }: Facts): number => evidence.vehicle?.sensorFrequencyMHz ?? 0

const failureCodes = [
  'sensor-silent',
  'sensor-battery-low',
  'sensor-reads-wrong',
  'sensor-temperature-impossible',
  'sensor-does-not-follow',
] as const

const allNearUsualLife = (facts: Facts): boolean =>
  facts.sensing &&
  facts.road.every((wheel) => (wheel.given.sensorAgeMonths ?? 0) >= thresholds.usualLifeMonths)

const allWork = (road: readonly WheelFacts[], prior: PriorFindings): boolean =>
  road.every((wheel) => wheel.sensor.answered) && !failureCodes.some((code) => prior.has(code))

const failedCount = (facts: Facts, prior: PriorFindings): Figures => {
  const failed = facts.road.filter((wheel) =>
    failureCodes.some((code) => prior.has(code, wheel.position)),
  ).length
  if (prior.has('no-wheel-answers')) return { form: 'none-answers' }
  return failed > 1 ? { form: 'several', count: failed } : { count: failed }
}
