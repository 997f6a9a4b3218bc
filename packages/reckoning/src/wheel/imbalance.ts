import { metersPerMile } from '../units/exact-factors.ts'
import { inMillimeters } from '../units/length-units.ts'
import { type Millimeters, millimeters, type Newtons, newtons } from '../units/measured.ts'

/** What kind of vehicle a wheel is balanced for. */
export type BalancedFor = 'car' | 'fast-car' | 'light-truck'

/**
 * What may be left on each side of a wheel after balancing, in grams. The balancer's maker and the vehicle maker go before it.
 *
 * @units g at the rim, a side
 * @source X. Wang (editor), Vehicle Noise and Vibration Refinement, 2010, table 16.1: fast cars 5, standard cars 10, light
 * trucks 30 (read)
 */
export const mostLeftGrams: Readonly<Record<BalancedFor, number>> = {
  car: 10,
  'fast-car': 5,
  'light-truck': 30,
}

/**
 * Ounces of a wheel weight in grams. 0.25 oz is 7.1 g.
 *
 * @formula oz × 28.349523125
 * @units oz to g
 * @source ounce 28.349523125 g, international yard and pound agreement of 1959 (computed from definition)
 */
export const gramsFromOunces = (ounces: number): number => ounces * 28.349523125

/** As a balancer shows it. */
export type BalanceUnit = 'oz' | 'g'

/**
 * In grams what a balancer shows in its unit.
 *
 * @units oz or g to g
 * @source as in `gramsFromOunces`
 */
export const inGrams = (value: number, unit: BalanceUnit): number =>
  unit === 'oz' ? gramsFromOunces(value) : value

/** What is left on a wheel, and what it does on the road. */
export type Imbalance = {
  /** The heavier side. */
  readonly grams: number
  readonly isOver: boolean
  /** What the two sides pull at most, when they point the same way. */
  readonly force: Newtons
  /** How often a second. */
  readonly hertz: number
}

export type ImbalanceOf = {
  readonly grams: { readonly inner: number; readonly outer: number }
  readonly rimInches: number
  readonly tireDiameter: Millimeters
  readonly milesPerHour: number
  readonly on: BalancedFor
}

/**
 * Whether what is left after balancing is within what may be left on a side, and what it does on the road: how hard and how
 * often the wheel is pulled. An ounce on a 16 in rim pulls about 9 lbf at 60 mph, 13 times a second.
 *
 * @formula force = (inner + outer) · rim radius · ω²; ω = speed / tire radius; times a second = ω / 2π
 * @units g, in, mm, mph; N and 1/s
 * @limits the tire's nominal radius: a loaded tire turns some 3 % faster (from memory); the weights at the rim's nominal
 * radius; a side's limit by kind of vehicle, whatever the wheel weighs
 * @source the limit as in `mostLeftGrams`; force on a circle (computed from definition)
 */
export const imbalance = ({ grams, rimInches, tireDiameter, milesPerHour, on }: ImbalanceOf): Imbalance => {
  const speed = (milesPerHour * metersPerMile) / 3_600
  const radiansPerSecond = speed / (tireDiameter / 2_000)
  const rimRadius = millimeters(inMillimeters({ value: rimInches, unit: 'in' }) / 2)
  const kilograms = (grams.inner + grams.outer) / 1_000
  const heavier = Math.max(grams.inner, grams.outer)
  return {
    grams: heavier,
    isOver: heavier > mostLeftGrams[on] + 1e-9,
    force: newtons(kilograms * (rimRadius / 1_000) * radiansPerSecond ** 2),
    hertz: radiansPerSecond / (2 * Math.PI),
  }
}
