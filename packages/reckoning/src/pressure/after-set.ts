import {
  type AbsoluteKilopascals,
  type GaugeKilopascals,
  type KilopascalsApart,
  kilopascalsApart,
} from '../units/measured.ts'
import { kilopascalsOver, magnitude } from '../units/pressure-difference.ts'
import { inKilopascals } from '../units/pressure-units.ts'
import { shownTooLowBySeaLevelSensor } from './altitude-change.ts'
import { above } from './threshold.ts'

/** How near its target a tire must be left, in psi. */
export type AfterSetLimits = {
  readonly overPsi: number
  readonly acrossAxlePsi: number
  readonly sensorPsi: number
}

export const usualAfterSetLimits: AfterSetLimits = { overPsi: 1.5, acrossAxlePsi: 1, sensorPsi: 2 }

/**
 * Whether a tire was left on its target: never under it, at most 1.5 psi over it, and never over what its sidewall allows.
 *
 * @formula −0.05 psi ≤ as left − target ≤ limit + 0.05 psi: half of the tenth that a gauge shows, either way; as left ≤
 * sidewall maximum
 * @units kPa gauge
 * @limits the limit is a setting of the shop; `sidewallMaximum` null: not known
 * @source common practice, no source; the half digit is this program's own rule; that the sidewall's figure is the tire's
 * limit: 49 CFR 571.139 S5.5, from memory
 */
export const judgeAsLeft = (
  target: GaugeKilopascals,
  asLeft: GaugeKilopascals,
  { overPsi }: AfterSetLimits = usualAfterSetLimits,
  sidewallMaximum: GaugeKilopascals | null = null,
): 'on-target' | 'under' | 'over' | 'over-sidewall' => {
  if (sidewallMaximum !== null && above(asLeft, sidewallMaximum)) return 'over-sidewall'
  const over = kilopascalsOver(asLeft, target)
  if (over < -halfDigit) return 'under'
  return over <= psi(overPsi) + halfDigit ? 'on-target' : 'over'
}

/**
 * Whether the two tires of an axle were left alike: within 1.0 psi of each other.
 *
 * @formula |left − right| ≤ limit + 0.05 psi
 * @units kPa gauge
 * @limits the limit is a setting of the shop; not for an axle with a temporary spare on it
 * @source common practice, no source; the half digit is this program's own rule
 */
export const isAxleAlike = (
  left: GaugeKilopascals,
  right: GaugeKilopascals,
  { acrossAxlePsi }: AfterSetLimits = usualAfterSetLimits,
): boolean => magnitude(kilopascalsOver(left, right)) <= psi(acrossAxlePsi) + halfDigit

/**
 * Whether a sensor agrees with the gauge: within 2 psi, once what altitude makes of it is taken out.
 *
 * @formula |gauge − sensor − (refers to the sea: 101.325 − Pa, else 0)| ≤ limit + 0.05 psi
 * @units kPa gauge, kPa absolute
 * @limits the limit is a setting of the shop
 * @source common practice, no source; sensors are usually good to 1 or 2 psi
 */
export const sensorAgrees = (
  of: {
    readonly gauge: GaugeKilopascals
    readonly sensor: GaugeKilopascals
    readonly refersTo: 'local-air' | 'sea-level'
    readonly air: AbsoluteKilopascals
  },
  { sensorPsi }: AfterSetLimits = usualAfterSetLimits,
): boolean => {
  const expected = of.refersTo === 'sea-level' ? shownTooLowBySeaLevelSensor(of.air) : 0
  const apart = kilopascalsApart(kilopascalsOver(of.gauge, of.sensor) - expected)
  return magnitude(apart) <= psi(sensorPsi) + halfDigit
}

const psi = (value: number): KilopascalsApart => kilopascalsApart(inKilopascals({ value, unit: 'psi' }))

const halfDigit = psi(0.05)
