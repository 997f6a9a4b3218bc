import type { Figures } from '../diagnosis.ts'
import type { Facts } from '../facts/facts.ts'
import type { WheelFacts } from '../facts/wheel-facts.ts'
import { type Shown, wheelFigures } from '../rule.ts'

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

/** Beside those, what distinguishes a low tire from a sensor that reads low. */
export const lowTireFields = [
  ...pressureFields,
  'light.behavior',
  'wheels.*.sensorPressure',
  'wheels.*.followsPressure',
  'wheels.*.sensorAgeMonths',
  'events.sensor-fitted-today',
  'events.sensor-replaced-elsewhere',
] as const

/** Beside those, what identifies tires that are only cold. */
export const coldGroupFields = [
  ...lowTireFields,
  'surroundings.lastSet.temperature',
  'surroundings.lastSet.altitude',
] as const

/** The warning point of a wheel, as a reason gives it. */
export const warningPointOf = ({ display }: Facts, { warn }: WheelFacts) => ({
  point: display.pressure(warn ?? 0),
  unit: display.unit,
})

/** What a tire holds cold beside its label figure, as a reason gives it. */
export const coldOf = ({ display }: Facts, { cold, label }: WheelFacts) => ({
  cold: display.pressure(cold ?? 0),
  label: display.pressure(label ?? 0),
  unit: display.unit,
})

/** The reason for most pressure findings: the cold tire does not hold the label figure. */
export const coldUnderLabel = (facts: Facts, wheel: WheelFacts): Shown => ({
  code: 'cold-under-label',
  values: coldOf(facts, wheel),
})

/** For several wheels, the customer's sentence gives the gauge value of the one furthest under its label. */
export const gaugeFigures = (facts: Facts, wheels: readonly WheelFacts[]): Figures =>
  figuresOf(facts, wheels, (wheel) => wheel.judged ?? wheel.seen)

/** The same with cold pressures; for tires that hold too much, `furthest` picks the one furthest over its label. */
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
    value: facts.display.pressure(worst.value),
    label: facts.display.pressure(worst.label),
    difference: facts.display.pressure(Math.abs(worst.label - worst.value)),
    unit: facts.display.unit,
  }
}
