import { judgePuncture } from '../../tire/puncture-verdict.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { groundsOf, onWheels, type RuleBody, wheelFigures } from '../rule.ts'

const punctureFields = [
  'wheels.*.tireDamage',
  'wheels.*.punctures',
  'wheels.*.treadDepth32nds',
  'wheels.*.insideTire',
] as const

/** A hole that no repair can close for good. */
export const notRepairableRule: RuleBody = {
  kind: 'stop',
  stop: 'repair-before-release',
  confidence: 'firm',
  reads: punctureFields,
  when: 'A puncture is in the shoulder or sidewall, wider than 6 mm (1/4 in), overlaps an earlier repair, or is in a tire that is worn out or damaged inside.',
  means: 'The tire is replaced; nothing is plugged.',
  offers: ['tire'],
  holds: ['road', 'hand-back'],
  find: (facts) =>
    onWheels(
      facts.wheels,
      (wheel) => isPunctured(wheel) && isBeyondRepair(wheel),
      (wheels) => ({
        ...(wheels.some(({ road }) => road) ? {} : { holds: [] }),
        because: () => groundsOf(wheels, 'punctures', () => ({ code: 'beyond-repair-limits' })),
        figures: () => wheelFigures(wheels),
      }),
    ),
}

/** A hole that may be repaired from inside, once it was looked at there. */
export const punctureRule: RuleBody = {
  kind: 'also',
  confidence: 'firm',
  reads: punctureFields,
  when: 'A puncture was seen that is not known to be beyond repair.',
  means:
    'Where air is lost, it is the reason. The object stays in until the customer has decided; the repair is made from inside.',
  offers: ['leak-find'],
  holds: [],
  find: (facts) =>
    onWheels(
      facts.wheels,
      (wheel) => isPunctured(wheel) && !isBeyondRepair(wheel),
      (wheels) => ({
        because: () => groundsOf(wheels, 'tireDamage', () => ({ code: 'puncture-seen' })),
        figures: () => wheelFigures(wheels),
      }),
    ),
}

const isPunctured = ({ given }: WheelFacts): boolean =>
  (given.tireDamage ?? []).includes('puncture') || (given.punctures ?? []).length > 0

/** Some fact that is known rules a repair out; what is not known does not. */
const isBeyondRepair = ({ given }: WheelFacts): boolean =>
  judgePuncture({
    punctures: (given.punctures ?? []).map(({ place, millimeters, overlapsRepair }) => ({
      place: place ?? null,
      millimeters: millimeters ?? null,
      overlapsRepair: overlapsRepair ?? null,
    })),
    treadDepth32nds: given.treadDepth32nds ?? null,
    isSoundInside: given.insideTire == null ? null : given.insideTire === 'sound',
  }).verdict === 'not-repairable'
