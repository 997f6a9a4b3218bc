import { above, atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import {
  type GaugeKilopascals,
  gaugeKilopascals,
  type KilopascalsApart,
  kilopascalsApart,
} from '../../units/measured.ts'
import { kilopascalsOver, magnitude, raisedBy } from '../../units/pressure-difference.ts'
import type { Figures } from '../diagnosis.ts'
import type { Facts } from '../facts/facts.ts'
import { keepsLampLit, warns } from '../facts/lamp-threshold.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import {
  type Ground,
  groundsOf,
  type Match,
  onWheels,
  positionsOf,
  type RuleBook,
  type Shown,
} from '../rule.ts'
import { thresholds } from '../thresholds.ts'
import {
  coldFigures,
  coldOf,
  coldUnderLabel,
  gaugeFigures,
  lowTireFields,
  pressureFields,
  warningPointOf,
} from './pressure-words.ts'
import { punctureRule } from './puncture.ts'

/** What the tires hold, one wheel at a time. A wheel without a usable gauge value gets no verdict. */
export const oneTireRules = {
  'tire-low': {
    kind: 'also',
    confidence: 'firm',
    reads: lowTireFields,
    when: 'A tire is at or under its warning point, by gauge or once brought to outdoor temperature; while the light is solid and no tire is that low, also within its hold of 3 psi. Not by the heat of a hot corner.',
    means: 'The tire is low and the light is right.',
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
              because: (wheels) => groundsOf(wheels, 'gauge', (wheel) => coldUnderLabel(facts, wheel)),
              figures: (wheels) => coldFigures(facts, wheels),
            }),
          )
        : null,
  },
  'over-inflated': {
    kind: 'also',
    confidence: 'firm',
    reads: [...pressureFields, 'vehicle.sidewallMaximum.*'],
    when: 'A cold tire holds 1.2 times its label figure or more, or is over the maximum on its sidewall by more than 1 psi and 3 %.',
    means: "Too hard; within 1 psi of it, somebody set it to the sidewall's figure.",
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
          because: (wheels) => groundsOf(wheels, 'gauge', (wheel) => besideSidewall(facts, wheel)),
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
    offers: [],
    holds: [],
    find: (facts) =>
      facts.system === 'direct' && facts.behavior === 'off'
        ? onWheels(
            facts.road,
            (wheel) => warns(wheel.judged, wheel),
            (wheels) => ({
              because: () => [
                ...groundsOf(wheels, 'gauge', (wheel) => atWarningPoint(facts, wheel)),
                { field: 'light.behavior', code: 'no-light' },
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
            ...atWarningPoint(facts, spare),
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
    offers: ['pressure-set'],
    holds: [],
    find: (facts) =>
      onWheels(
        facts.road,
        (wheel) =>
          !wheel.carriesSpare && wheel.deficit !== null && atOrAbove(wheel.deficit, thresholds.underPlacard),
        () => ({
          because: (wheels) => groundsOf(wheels, 'gauge', (wheel) => coldUnderLabel(facts, wheel)),
          figures: (wheels) => coldFigures(facts, wheels),
        }),
      ),
  },
  'puncture-found': punctureRule,
  'spare-under-label': {
    kind: 'note',
    confidence: 'firm',
    reads: ['vehicle.spare', 'vehicle.spareMonitored', ...pressureFields],
    when: 'A spare that the vehicle does not listen to is 5 psi or 15 % or more under its label figure.',
    means: 'No lamp says so; it is set before somebody needs it.',
    offers: ['pressure-set'],
    holds: [],
    find: (facts) => {
      const { spare } = facts
      if (facts.spareMonitored || spare === null || !isUnderLabel(spare)) return null
      return {
        wheels: ['SP'],
        because: () =>
          groundsOf([spare], 'gauge', ({ label }) => ({
            code: 'under-label',
            values: { label: facts.display.pressure(label ?? 0), unit: facts.display.unit },
          })),
        figures: () => gaugeFigures(facts, [spare]),
      }
    },
  },
} satisfies Partial<RuleBook>

/** As gauged: a spare is set by its label whatever the weather. */
const isUnderLabel = ({ judged, label }: WheelFacts): boolean => {
  if (judged === null || label === null) return false
  const lack = kilopascalsOver(label, judged)
  return (
    atOrAbove(lack, thresholds.spareUnder) ||
    atOrAbove(lack, kilopascalsApart(thresholds.spareUnderShare * label))
  )
}

function tireLow(facts: Facts): Match | null {
  const { firm, likely } = facts.lowTires
  const low = [...firm, ...likely]
  if (low.length === 0) return null
  return {
    wheels: positionsOf(low),
    confidence: firm.length > 0 ? 'firm' : 'likely',
    because: (wheels) => wheels.map((wheel) => lowGround(facts, wheel)),
    figures: (wheels) => ({ ...lowFigures(facts, wheels), ...lowForm(facts, wheels) }),
  }
}

/** Only brought to outdoor temperature is it as low as that. */
const isLowOnlyCold = (wheel: WheelFacts): boolean => !warns(wheel.judged, wheel) && warns(wheel.cold, wheel)

/** Where every low tire reads well enough while warm, the cold figure is what proves it. */
const lowFigures = (facts: Facts, wheels: readonly WheelFacts[]): Figures => {
  if (!wheels.every(isLowOnlyCold)) return gaugeFigures(facts, wheels)
  const figures = coldFigures(facts, wheels)
  const [worst] = [...wheels].sort((one, other) => (one.cold ?? 0) - (other.cold ?? 0))
  return {
    ...figures,
    warm: facts.display.pressure(worst?.judged ?? 0),
    point: facts.display.pressure(worst?.warn ?? 0),
  }
}

const lowForm = (facts: Facts, wheels: readonly WheelFacts[]): Figures => {
  if (wheels.every(isLowOnlyCold)) return { form: 'only-cold' }
  if (facts.behavior?.startsWith('flash')) return { form: 'under-flash' }
  return facts.behavior === 'solid' && facts.system !== 'none' ? {} : { form: 'without-light' }
}

const lowGround = (facts: Facts, wheel: WheelFacts): Ground => {
  const gauge = `wheels.${wheel.position}.gauge`
  if (warns(wheel.judged, wheel)) return { field: gauge, ...atWarningPoint(facts, wheel) }
  const point = warningPointOf(facts, wheel)
  if (warns(wheel.cold, wheel)) {
    const values = { ...coldOf(facts, wheel), ...point }
    return { field: gauge, code: 'cold-at-or-under-warning-point', values }
  }
  const values = { hold: facts.display.pressure(thresholds.hold), ...point }
  return keepsLampLit(wheel.judged, wheel) || keepsLampLit(wheel.cold, wheel)
    ? { field: gauge, code: 'within-hold', values }
    : { field: `wheels.${wheel.position}.sensorPressure`, code: 'sensor-within-hold', values }
}

const atWarningPoint = (facts: Facts, wheel: WheelFacts): Shown => ({
  code: 'at-or-under-warning-point',
  values: warningPointOf(facts, wheel),
})

const overSidewall = (wheel: WheelFacts): boolean =>
  wheel.cold !== null &&
  wheel.sidewallMaximum !== null &&
  above(kilopascalsOver(wheel.cold, wheel.sidewallMaximum), overSidewallBy(wheel.sidewallMaximum))

/** Many trucks' labels call for the sidewall's maximum itself, so what instruments may be wrong by is no danger yet. */
const overSidewallBy = (maximum: GaugeKilopascals): KilopascalsApart =>
  kilopascalsApart(Math.max(thresholds.overSidewall, thresholds.overSidewallShare * maximum))

/** Whether a hard tire was set to the figure on its sidewall, or above it. */
const besideSidewall = (facts: Facts, wheel: WheelFacts): Shown => {
  const { cold, sidewallMaximum } = wheel
  if (sidewallMaximum === null || cold === null) return coldUnderLabel(facts, wheel)
  const values = { ...coldOf(facts, wheel), sidewall: facts.display.pressure(sidewallMaximum) }
  if (overSidewall(wheel)) return { code: 'cold-above-sidewall-maximum', values }
  return atOrBelow(magnitude(kilopascalsOver(cold, sidewallMaximum)), thresholds.nearSidewall)
    ? { code: 'cold-at-sidewall-maximum', values }
    : coldUnderLabel(facts, wheel)
}
