import type { Pressure } from '../quantity.ts'
import type { TemperatureQuality } from '../sheet.ts'
import { type GaugeKilopascals, gaugeKilopascals, type Kelvin, type Meters } from '../units/measured.ts'
import { inKilopascals, kilopascalsIn } from '../units/pressure-units.ts'
import { airPressureAtAltitude } from './air-pressure.ts'
import { shiftPressure } from './shift-pressure.ts'
import { above } from './threshold.ts'

/** The temperature of the air in the tire, and its source. */
export type TireTemperature = { readonly kelvin: Kelvin; readonly quality: TemperatureQuality }

export type SetTargetOf = {
  /** The label's cold figure as printed. */
  readonly placard: Pressure
  /** As the sidewall prints it; `null`: not known. */
  readonly sidewallMaximum: Pressure | null
  readonly outdoor: Kelvin
  /** `null`: the tire is warm by an unknown amount. */
  readonly tire: TireTemperature | null
  readonly altitude: Meters
}

/** How far over the label a warm tire may be set. */
export type TargetCaps = {
  /** The greater of these two. */
  readonly overPsi: number
  readonly overShare: number
  /** Instead of them, where the tire's temperature is assumed. */
  readonly overAssumedPsi: number
}

export const usualCaps: TargetCaps = { overPsi: 6, overShare: 0.15, overAssumedPsi: 3 }

export type SetTarget =
  | {
      readonly ok: true
      /** Gauge pressure to set now, in the label's own unit: to 0.1 psi, 1 kPa or 0.01 bar. */
      readonly target: Pressure
      readonly quality: TemperatureQuality
      /** The cap that kept the target below the figure for this temperature; the tire is then finished cold. */
      readonly cappedBy: 'sidewall-maximum' | 'allowance' | null
    }
  | {
      readonly ok: false
      readonly fault: 'label-over-sidewall'
      readonly label: Pressure
      readonly sidewallMaximum: Pressure
    }

/**
 * The pressure to set a tire to while it is warmer than the air outside, so that it reads the label's figure once it
 * is cold. Never under the label, never over the sidewall's maximum; a label over the sidewall's maximum is refused.
 * A tire of unknown temperature gets the label's figure. The vehicle maker's label governs; the
 * sidewall's figure is the tire's limit, no setting; a warm tire is not bled. 35 psi in a 70 °F bay with 20 °F
 * outside at the sea: 40.2 psi.
 *
 * @formula max(placard, placard shifted from outdoor to tire temperature), at most min(sidewall maximum, placard +
 * max(6 psi, 0.15 · placard)), or placard + 3 psi where the temperature is assumed
 * @units psi, kPa or bar as the label prints it, K, m to the label's own unit
 * @limits the caps are settings of the shop
 * @source ideal gas law (computed from definition); caps and quality words are common practice, no source
 */
export const setTarget = (of: SetTargetOf, caps: TargetCaps = usualCaps): SetTarget => {
  const { placard, sidewallMaximum, tire } = of
  const label = inKilopascals(placard)
  if (sidewallMaximum !== null && above(label, inKilopascals(sidewallMaximum)))
    return {
      ok: false,
      fault: 'label-over-sidewall',
      label: placard,
      sidewallMaximum,
    }
  const allowed = allowedOver(label, tire, caps)
  const highest = gaugeKilopascals(
    Math.min(allowed, sidewallMaximum === null ? allowed : inKilopascals(sidewallMaximum)),
  )
  const asked = tire === null ? label : shiftedToTire(of, label, tire.kelvin)
  const capped = above(asked, highest)
  const target = { value: toSet(asked, highest, placard), unit: placard.unit }
  const quality = tire?.quality ?? 'assumed'
  return {
    ok: true,
    target,
    quality,
    cappedBy: !capped ? null : highest === allowed ? 'allowance' : 'sidewall-maximum',
  }
}

const allowedOver = (label: GaugeKilopascals, tire: TireTemperature | null, caps: TargetCaps) => {
  const psi = (value: number) => inKilopascals({ value, unit: 'psi' })
  return gaugeKilopascals(
    label +
      (tire?.quality === 'assumed'
        ? psi(caps.overAssumedPsi)
        : Math.max(psi(caps.overPsi), caps.overShare * label)),
  )
}

const shiftedToTire = (
  { outdoor, altitude }: SetTargetOf,
  label: GaugeKilopascals,
  tire: Kelvin,
): GaugeKilopascals => {
  const air = airPressureAtAltitude(altitude)
  return shiftPressure({ gauge: label, from: outdoor, to: tire, airBefore: air, airAfter: air })
}

/** Steps in one unit of what a gauge shows. */
const stepsIn: Readonly<Record<Pressure['unit'], number>> = { psi: 10, kPa: 1, bar: 100 }

/** Rounds to what a gauge shows, but down at a cap, and never below the label. */
const toSet = (asked: GaugeKilopascals, highest: GaugeKilopascals, { value, unit }: Pressure): number => {
  const steps = stepsIn[unit]
  const nearest = Math.round(kilopascalsIn(unit, asked) * steps)
  // A billionth, because 80 psi come back from kPa as 79.99999999999999.
  const most = Math.floor(kilopascalsIn(unit, highest) * steps + 1e-9)
  return Math.max(value, Math.min(nearest, most) / steps)
}
