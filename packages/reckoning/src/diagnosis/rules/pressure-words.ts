import type { Figures } from '../diagnosis.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { wheelFigures } from '../rule.ts'

/** The fields that every pressure verdict rests on. */
export const pressureFields = [
  'wheels.*.gauge',
  'events.moved-since-reading',
  'events.air-added',
  'wheels.*.sensorTemperature',
  'vehicle.placard.*',
  'vehicle.warnAt.*',
  'vehicle.loadClass.*',
  'surroundings.outdoor',
  'surroundings.tires',
  'surroundings.tireTemperature',
  'surroundings.altitude',
] as const

export const warnWords = (facts: Facts, wheel: WheelFacts): string => facts.shown.pressure(wheel.warn ?? 0)

export const coldWords = (facts: Facts, wheel: WheelFacts): string =>
  `cold it holds ${facts.shown.pressure(wheel.cold ?? 0)} where the label asks for ${facts.shown.pressure(wheel.label ?? 0)}`

/** Of several wheels the customer's sentence gives the gauge value of the one furthest under its label. */
export const gaugeFigures = (facts: Facts, wheels: readonly WheelFacts[]): Figures =>
  figuresOf(facts, wheels, (wheel) => wheel.judged ?? wheel.seen)

/** The same by what the tires hold cold; `furthest` over the label instead for tires that hold too much. */
export const coldFigures = (
  facts: Facts,
  wheels: readonly WheelFacts[],
  furthest: 'under' | 'over' = 'under',
): Figures => figuresOf(facts, wheels, (wheel) => wheel.cold, furthest)

const figuresOf = (
  facts: Facts,
  wheels: readonly WheelFacts[],
  heldBy: (wheel: WheelFacts) => number | null,
  furthest: 'under' | 'over' = 'under',
): Figures => {
  const known = wheels.flatMap((wheel) => {
    const value = heldBy(wheel)
    return value === null || wheel.label === null ? [] : [{ value, label: wheel.label }]
  })
  const sign = furthest === 'under' ? 1 : -1
  const worst = known.sort((one, other) => sign * (one.value / one.label - other.value / other.label))[0]
  if (worst === undefined) return wheelFigures(wheels)
  return {
    ...wheelFigures(wheels),
    value: facts.shown.pressureNumber(worst.value),
    label: facts.shown.pressureNumber(worst.label),
    difference: facts.shown.pressureNumber(Math.abs(worst.label - worst.value)),
    unit: facts.shown.unit,
  }
}
