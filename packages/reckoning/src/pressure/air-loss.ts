import {
  type AbsoluteKilopascals,
  type GaugeKilopascals,
  type Kelvin,
  type KilopascalsApart,
  kelvins,
  kilopascalsApart,
} from '../units/measured.ts'
import { kilopascalsOver } from '../units/pressure-difference.ts'
import { shiftPressure } from './shift-pressure.ts'
import { above } from './threshold.ts'

/** A gauge value with the temperature of the air in the tire and the open air at the place. */
export type GaugedTire = {
  readonly gauge: GaugeKilopascals
  readonly temperature: Kelvin
  readonly air: AbsoluteKilopascals
}

/** Air lost between two readings with weather and altitude taken out; negative where air was added. */
export type AirLoss = {
  readonly drop: KilopascalsApart
  readonly days: number
  readonly perDay: KilopascalsApart
}

/** 68 °F: two readings are compared at this temperature. */
const compared = kelvins(293.15)

/**
 * What a tire lost since an earlier reading, both brought to 68 °F and the present altitude. 35.0 psi at 68 °F and
 * nine days later 24.5 at 38 °F: the gauge shows 10.5 psi less, of which 8.1 are lost air, 0.90 a day.
 *
 * @formula drop = N(earlier) − N(now), N: shifted to 293.15 K and the open air here; perDay = drop / days
 * @units kPa gauge, K, kPa absolute, days to kPa and kPa a day
 * @limits null where no time passed between the readings; whether the drop means a leak is for `lossUncertainty`
 * @source ideal gas law (computed from definition); 68 °F is this program's own rule
 */
export const lossBetween = (earlier: GaugedTire, now: GaugedTire, days: number): AirLoss | null => {
  if (!(days > 0)) return null
  const drop = kilopascalsOver(atReference(earlier, now.air), atReference(now, now.air))
  return { drop, days, perDay: kilopascalsApart(drop / days) }
}

const atReference = ({ gauge, temperature, air }: GaugedTire, here: AbsoluteKilopascals): GaugeKilopascals =>
  shiftPressure({ gauge, from: temperature, to: compared, airBefore: air, airAfter: here })

/** How far off a reading may be, either way. */
export type ReadingErrors = {
  readonly gauge: KilopascalsApart
  /** In kelvin, of the air in the tire. */
  readonly temperature: number
}

/**
 * How far off the drop between two readings may be. With gauges good to 1 psi and temperatures to 5 °F, 1.6 psi on a
 * car's tire; with gauges good to 0.5 psi, 1.0.
 *
 * @formula u = √(2 · (g² + (s · δT)²)), s = (P + Pa) / T, the change of pressure by each kelvin
 * @units kPa, K to kPa
 * @limits both readings alike; errors taken as independent. Never negative
 * @source propagation of independent errors (computed from definition); the errors themselves are common
 * practice, no source
 */
export const lossUncertainty = (tire: GaugedTire, errors: ReadingErrors): KilopascalsApart => {
  const perKelvin = (tire.gauge + tire.air) / tire.temperature
  return kilopascalsApart(Math.sqrt(2 * (errors.gauge ** 2 + (perKelvin * errors.temperature) ** 2)))
}

/**
 * Whether what was lost is more than the readings can be off by: only then may anyone speak of a leak.
 *
 * @formula drop > u, and not within 0.005 psi of it
 * @units kPa
 * @source common practice, no source
 */
export const isLeak = ({ drop }: AirLoss, uncertainty: KilopascalsApart): boolean => above(drop, uncertainty)

/**
 * Whole days until a tire that loses air reaches its warning point, a day at least; null where it has reached it or
 * loses nothing. It says nothing about whether the tire may be driven.
 *
 * @formula ⌊(cold − warn) / perDay⌋, at least 1
 * @units kPa gauge, kPa a day to days
 * @limits takes the weather to stay as it is
 * @source computed from definition
 */
export const daysToWarning = (
  cold: GaugeKilopascals,
  warn: GaugeKilopascals,
  perDay: KilopascalsApart,
): number | null =>
  cold <= warn || !(perDay > 0) ? null : Math.max(1, Math.floor(kilopascalsOver(cold, warn) / perDay))
