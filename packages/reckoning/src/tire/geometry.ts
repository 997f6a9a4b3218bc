import type { Distance } from '../quantity.ts'
import { metersPerMile } from '../units/exact-factors.ts'
import { inMillimeters } from '../units/length-units.ts'
import { type Millimeters, millimeters } from '../units/measured.ts'
import type { MeasuredTireSize } from './tire-size.ts'

/**
 * The nominal height of a sidewall, rim to tread. 245/55R18 has 134.75 mm.
 *
 * @formula width · aspect / 100; of a flotation size (diameter − rim) / 2
 * @units mm
 * @limits nominal: the tire as made differs by a few percent
 * @source a tire dealer's page with a worked example (read)
 */
export const sidewallHeight = (size: MeasuredTireSize): Millimeters =>
  millimeters(
    size.kind === 'metric'
      ? (size.width * size.aspectPercent) / 100
      : (overallDiameter(size) - rimDiameter(size)) / 2,
  )

/**
 * The nominal diameter of a tire with its wheel, unloaded. 245/55R18 has 726.7 mm.
 *
 * @formula 25.4 · rim + 2 · sidewall; of a flotation size 25.4 · diameter
 * @units in and mm to mm
 * @limits nominal, as for `sidewallHeight`
 * @source a tire dealer's page with a worked example (read); inch 25.4 mm (computed from definition)
 */
export const overallDiameter = (size: MeasuredTireSize): Millimeters =>
  size.kind === 'metric'
    ? millimeters(rimDiameter(size) + 2 * sidewallHeight(size))
    : inMillimeters({ value: size.diameterInches, unit: 'in' })

/**
 * The nominal way around the tire. 245/55R18 has 2,283 mm.
 *
 * @formula π · diameter
 * @units mm
 * @limits nominal and unloaded
 * @source the circle (computed from definition)
 */
export const circumference = (size: MeasuredTireSize): Millimeters =>
  millimeters(Math.PI * overallDiameter(size))

/**
 * Nominal revolutions over a mile or a kilometer. 245/55R18 makes 704.9 a mile.
 *
 * @formula 1,609,344 mm or 1,000,000 mm / circumference
 * @units revolutions a mile or a km
 * @limits nominal: under load a tire rolls on a smaller radius and makes about 2 to 3 % more (from memory)
 * @source the circle; mile 1,609.344 m (computed from definition)
 */
export const revolutionsPer = (unit: Distance['unit'], size: MeasuredTireSize): number =>
  (unit === 'mi' ? metersPerMile * 1_000 : 1_000_000) / circumference(size)

/** How the rolling size changes; the speedometer then shows too little where it grows. */
export type DiameterChange = { readonly percent: number; readonly withinTrade: boolean }

/**
 * How much larger in diameter another size is. 225/45R17 instead of 205/55R16: +0.38 %. Within 3 % either way the trade
 * takes it as the same rolling size; whether a size may be fitted at all, the vehicle maker's label and the load check
 * say.
 *
 * @formula 100 · (diameter of the other / diameter − 1)
 * @units %
 * @limits nominal diameters
 * @source 3 %: common practice, no source
 */
export const diameterChange = (size: MeasuredTireSize, other: MeasuredTireSize): DiameterChange => {
  const percent = 100 * (overallDiameter(other) / overallDiameter(size) - 1)
  return { percent, withinTrade: Math.abs(percent) <= tradeTolerancePercent }
}

/** A billionth, because 41.2 in over 40 in come out as 3.0000000000000027 %. */
const tradeTolerancePercent = 3 + 1e-9

const rimDiameter = (size: MeasuredTireSize): Millimeters =>
  inMillimeters({ value: size.rimInches, unit: 'in' })
