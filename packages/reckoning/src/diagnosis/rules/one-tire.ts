import { above, atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import { gaugeKilopascals } from '../../units/measured.ts'
import { kilopascalsOver, magnitude, raisedBy } from '../../units/pressure-difference.ts'
import type { Facts } from '../facts/facts.ts'
import { keepsLampLit, warns } from '../facts/lamp-threshold.ts'
import { wheelsWithDoubtfulSensor } from '../facts/sensor-doubts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { type Ground, groundsOf, type Match, onWheels, positionsOf, type RuleBook } from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import { coldFigures, coldWords, gaugeFigures, pressureFields, warnWords } from './pressure-words.ts'

/** What the tires hold, one wheel at a time. A wheel without a usable gauge value gets no verdict. */
export const oneTireRules = {
  'tire-low': {
    kind: 'also',
    confidence: 'firm',
    reads: [...pressureFields, 'light.behavior', 'wheels.*.sensorPressure'],
    when: 'A tire is at or under its warning point, by gauge or once brought to outdoor temperature; while the light is solid, also within its hold of 3 psi.',
    means: 'The tire is low and the light is right.',
    next: 'Find the leak before only filling.',
    offers: ['leak-find'],
    holds: [],
    find: tireLow,
  },
  'warm-tire-hides-low': {
    kind: 'also',
    confidence: 'firm',
    reads: pressureFields,
    when: 'The tires are warm, the gauge shows the label figure or less, and cold the tire is 2 psi or more under it.',
    means: 'Low in truth, although the gauge shows the label figure.',
    next: 'Set to the target for this temperature, finish cold. Never bleed a warm tire.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) =>
      facts.place.tiresWarm
        ? onWheels(
            facts.road,
            (wheel) =>
              wheel.judged !== null &&
              wheel.label !== null &&
              wheel.deficit !== null &&
              atOrBelow(wheel.judged, raisedBy(wheel.label, thresholds.warmGaugeOver)) &&
              atOrAbove(wheel.deficit, thresholds.warmDeficit),
            () => ({
              because: (wheels) => groundsOf(wheels, 'gauge', (wheel) => coldWords(facts, wheel)),
              figures: (wheels) => coldFigures(facts, wheels),
            }),
          )
        : null,
  },
  'over-inflated': {
    kind: 'also',
    confidence: 'firm',
    reads: [...pressureFields, 'vehicle.sidewallMaximum.*'],
    when: 'A cold tire holds 1.2 times its label figure or more, or more than its sidewall allows.',
    means: "Too hard; within 1 psi of it, somebody set it to the sidewall's figure.",
    next: 'Let down only when cold. Above the sidewall maximum: let down now, to the target for this temperature and never under it.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) =>
          !wheel.carriesSpare &&
          wheel.cold !== null &&
          wheel.label !== null &&
          (atOrAbove(wheel.cold, gaugeKilopascals(thresholds.overInflatedShare * wheel.label)) ||
            overSidewall(wheel)),
        (wheels) => ({
          holds: wheels.some(overSidewall) ? ['road'] : [],
          because: (wheels) =>
            groundsOf(wheels, 'gauge', (wheel) => `${coldWords(facts, wheel)}${sidewallWords(facts, wheel)}`),
          figures: (wheels) => coldFigures(facts, wheels, 'over'),
        }),
      ),
  },
  'no-warning-given': {
    kind: 'also',
    confidence: 'possible',
    reads: ['vehicle.system', 'light.behavior', ...pressureFields],
    when: 'A vehicle with sensors shows no light although a tire is at or under its warning point.',
    means: 'Driven less than 20 minutes since, or a fault in lamp or system.',
    next: 'Watch the lamp check at key-on, drive 20 minutes and look again.',
    offers: [],
    holds: [],
    find: (facts) =>
      facts.system === 'direct' && facts.behavior === 'off'
        ? onWheels(
            facts.road,
            (wheel) => warns(wheel.judged, wheel),
            (wheels) => ({
              because: () => [
                ...groundsOf(
                  wheels,
                  'gauge',
                  (wheel) => `at or under the warning point of ${warnWords(facts, wheel)}`,
                ),
                { field: 'light.behavior', says: 'and yet no light' },
              ],
              figures: () => gaugeFigures(facts, wheels),
            }),
          )
        : null,
  },
  'spare-low': {
    kind: 'also',
    confidence: 'firm',
    reads: ['vehicle.spareMonitored', ...pressureFields],
    when: 'The spare has a sensor that the vehicle listens to, and is at or under its warning point.',
    means: 'The spare lights the lamp.',
    next: 'Set the spare to its own label figure, and find out why it was low.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const { spare } = facts
      if (!facts.spareMonitored || spare === null) return null
      if (!warns(spare.judged ?? spare.seen, spare) && !warns(spare.cold, spare)) return null
      return {
        wheels: ['SP'],
        because: () => [
          {
            field: spare.judged === null ? 'wheels.SP.sensorPressure' : 'wheels.SP.gauge',
            says: `at or under the warning point of ${warnWords(facts, spare)}`,
          },
        ],
        figures: () => gaugeFigures(facts, [spare]),
      }
    },
  },
  'under-placard': {
    kind: 'note',
    confidence: 'firm',
    reads: pressureFields,
    when: 'A tire is 2 psi or more under its label figure, above its warning point, and nothing else covers it.',
    means: 'Worth setting; it does not light a lamp.',
    next: 'Set it to the label figure for the temperature of the day.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) =>
          !wheel.carriesSpare && wheel.deficit !== null && atOrAbove(wheel.deficit, thresholds.underPlacard),
        () => ({
          because: (wheels) => groundsOf(wheels, 'gauge', (wheel) => coldWords(facts, wheel)),
          figures: (wheels) => coldFigures(facts, wheels),
        }),
      ),
  },
} satisfies Partial<RuleBook>

function tireLow(facts: Facts): Match | null {
  const solid = facts.behavior === 'solid'
  const firm = facts.road.filter((wheel) => warns(wheel.judged, wheel) || warns(wheel.cold, wheel))
  const doubtful = solid ? wheelsWithDoubtfulSensor(facts) : new Set<WheelFacts>()
  const heldByGauge = (wheel: WheelFacts) => keepsLampLit(wheel.judged, wheel)
  const heldBySensor = (wheel: WheelFacts) =>
    wheel.judged !== null && !doubtful.has(wheel) && keepsLampLit(wheel.seen, wheel)
  const wheels = facts.road.filter(
    (wheel) => firm.includes(wheel) || (solid && (heldByGauge(wheel) || heldBySensor(wheel))),
  )
  if (wheels.length === 0) return null
  return {
    wheels: positionsOf(wheels),
    confidence: firm.length > 0 ? 'firm' : 'likely',
    because: () => wheels.map((wheel) => lowGround(facts, wheel)),
    figures: () => ({
      ...gaugeFigures(facts, wheels),
      ...(solid ? {} : { form: facts.behavior?.startsWith('flash') ? 'under-flash' : 'without-light' }),
    }),
  }
}

const lowGround = (facts: Facts, wheel: WheelFacts): Ground => {
  const gauge = `wheels.${wheel.position}.gauge`
  if (warns(wheel.judged, wheel)) {
    return { field: gauge, says: `at or under the warning point of ${warnWords(facts, wheel)}` }
  }
  if (warns(wheel.cold, wheel)) {
    return {
      field: gauge,
      says: `${coldWords(facts, wheel)}, at or under the warning point of ${warnWords(facts, wheel)}`,
    }
  }
  const held = `within the hold of ${facts.shown.pressure(thresholds.hold)} over the warning point of ${warnWords(facts, wheel)}: a lit lamp stays lit`
  return keepsLampLit(wheel.judged, wheel)
    ? { field: gauge, says: held }
    : { field: `wheels.${wheel.position}.sensorPressure`, says: `the vehicle sees this value, ${held}` }
}

const overSidewall = (wheel: WheelFacts): boolean =>
  wheel.cold !== null && wheel.sidewallMaximum !== null && above(wheel.cold, wheel.sidewallMaximum)

const sidewallWords = (facts: Facts, wheel: WheelFacts): string => {
  if (wheel.sidewallMaximum === null || wheel.cold === null) return ''
  const shown = facts.shown.pressure(wheel.sidewallMaximum)
  if (overSidewall(wheel)) return `, above the sidewall maximum of ${shown}`
  return atOrBelow(magnitude(kilopascalsOver(wheel.cold, wheel.sidewallMaximum)), thresholds.nearSidewall)
    ? `, set to the sidewall figure of ${shown}`
    : ''
}
