import { shiftPressure } from '../../pressure/shift-pressure.ts'
import { atOrBelow } from '../../pressure/threshold.ts'
import { type GaugeKilopascals, gaugeKilopascals } from '../../units/measured.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import {
  type Ground,
  ground,
  type Match,
  positionsOf,
  type RuleBody,
  type Shown,
  wheelFigures,
} from '../rule.ts'
import { thresholds } from '../thresholds.ts'

/** A tire that was run while nearly empty may be broken inside and look sound outside. */
export const runLowRule: RuleBody = {
  kind: 'stop',
  stop: 'do-not-drive',
  confidence: 'firm',
  reads: [
    'wheels.*.gauge',
    'wheels.*.tireDamage',
    'events.driven-low',
    'vehicle.placard.*',
    'vehicle.loadClass.*',
    'vehicle.casing.*',
    'wheels.*.sensorTemperature',
    'surroundings.*',
  ],
  when: 'A road tire holds half its label figure or less (light truck, steel cord or plies not read: 80 %, brought to the temperature at which it was set), or 15 psi or less, or was driven low.',
  means: 'The tire may be damaged inside and may burst when inflated.',
  offers: ['leak-find'],
  holds: ['inflation', 'road'],
  find: runLow,
}

function runLow(facts: Facts): Match | null {
  const drivenLow = facts.events.wheelsOf('driven-low')
  const wheels = facts.wheels.filter(
    (wheel) =>
      drivenLow.includes(wheel.position) ||
      (wheel.road &&
        (runLowGround(facts, wheel) !== null || wheel.given.tireDamage?.includes('run-low-dust'))),
  )
  if (wheels.length === 0) return null
  const lowest = wheels
    .filter((wheel) => runLowGround(facts, wheel) !== null)
    .sort((one, other) => (one.entered ?? 0) - (other.entered ?? 0))[0]
  return {
    wheels: positionsOf(wheels),
    because: () => wheels.flatMap((wheel) => runLowGrounds(facts, wheel, drivenLow.includes(wheel.position))),
    figures: () => ({
      ...wheelFigures(wheels),
      ...(lowest?.entered === null || lowest?.entered === undefined
        ? { form: 'told' }
        : {
            value: facts.display.pressure(lowest.entered),
            unit: facts.display.unit,
            ...(lowest.labelAsGiven === null
              ? { form: 'no-label' }
              : { label: facts.display.pressure(lowest.labelAsGiven) }),
          }),
    }),
  }
}

const runLowGrounds = (facts: Facts, wheel: WheelFacts, drivenLow: boolean): Ground[] => {
  const ofGauge = runLowGround(facts, wheel)
  return [
    ...(ofGauge === null ? [] : [ground(`wheels.${wheel.position}.gauge`, ofGauge)]),
    ...(drivenLow ? [ground('events.driven-low', { code: 'driven-low' })] : []),
    ...(wheel.given.tireDamage?.includes('run-low-dust')
      ? [ground(`wheels.${wheel.position}.tireDamage`, { code: 'run-low-dust' })]
      : []),
  ]
}

const runLowGround = (facts: Facts, wheel: WheelFacts): Shown | null => {
  const { display } = facts
  if (wheel.entered === null) return null
  const { labelAsGiven } = wheel
  const isUnder = (pressure: GaugeKilopascals, share: number) =>
    labelAsGiven !== null && atOrBelow(pressure, gaugeKilopascals(share * labelAsGiven))
  const shareReason = (share: number): Shown => ({
    code: 'at-or-under-share-of-label',
    values: { percent: share * 100, label: display.pressure(labelAsGiven ?? 0), unit: display.unit },
  })
  if (isUnder(wheel.entered, thresholds.runLowShare)) return shareReason(thresholds.runLowShare)
  if (
    mayHaveSteelPlies(wheel) &&
    isUnder(asWhenSet(facts, wheel, wheel.entered), thresholds.runLowShareSteelCord)
  )
    return shareReason(thresholds.runLowShareSteelCord)
  return atOrBelow(wheel.entered, thresholds.runLowAlways)
    ? {
        code: 'at-or-under-limit',
        values: { limit: display.pressure(thresholds.runLowAlways), unit: display.unit },
      }
    : null
}

/** A light-truck tire, unless its sidewall was read and says polyester. */
const mayHaveSteelPlies = (wheel: WheelFacts): boolean =>
  !wheel.carriesSpare && wheel.loadClass?.startsWith('LT-') === true && wheel.casing !== 'polyester'

/** What the tire would show at the temperature at which it was set: cold air alone is not running low. */
const asWhenSet = (
  { place }: Facts,
  { temperature }: WheelFacts,
  entered: GaugeKilopascals,
): GaugeKilopascals =>
  temperature === null
    ? entered
    : shiftPressure({
        gauge: entered,
        from: temperature,
        to: place.lastSetTemperature ?? thresholds.usualSetting,
        airBefore: place.air,
        airAfter: place.air,
      })
