import { usualAfterSetLimits } from '@bayledger/reckoning/pressure/after-set'
import { setTarget, type TireTemperature, usualCaps } from '@bayledger/reckoning/pressure/set-target'
import type { Pressure } from '@bayledger/reckoning/quantity'
import { placardOf, type Surroundings, type TemperatureQuality, tiresOf } from '@bayledger/reckoning/sheet'
import { metersFromFeet } from '@bayledger/reckoning/units/length-units'
import { printedIn } from '@bayledger/reckoning/units/printed-pressure'
import { inKelvin } from '@bayledger/reckoning/units/temperature-units'
import { axleOf, type WheelPosition } from '@bayledger/reckoning/wheels'
import type { OrderState } from '../state.ts'

export type PressureTarget =
  | {
      readonly ok: true
      /** Gauge pressure to set now, in psi, to a tenth. */
      readonly psi: number
      readonly placardPsi: number
      /** What the sidewall allows at most; `null`: the sheet does not say. */
      readonly sidewallMaximumPsi: number | null
      readonly quality: TemperatureQuality
      /** A cap held the target below the temperature-corrected figure: the tire must be finished cold. */
      readonly capped: boolean
      /** Nobody knows how warm the tire is, so the target is the label's figure alone. */
      readonly unmeasured: boolean
    }
  | { readonly ok: false; readonly refusal: TargetRefusal }

/** Why a wheel has no target: the sheet has no figure for it, or a figure that the tire cannot take. */
export type TargetRefusal =
  | { readonly why: 'no-figure' }
  | { readonly why: 'label-over-sidewall'; readonly label: Pressure; readonly sidewallMaximum: Pressure }

/**
 * The pressure to set a wheel to now: the label's figure carried from the outdoor temperature to the tire's own.
 * Refused if the sheet has no figure for the position, or a figure that the tire cannot take. The maker's
 * label governs.
 */
export const pressureTargetFor = (
  state: OrderState,
  wheel: WheelPosition,
  surroundings: Surroundings,
): PressureTarget => {
  const sheet = state.sheet?.sheet
  const axle = axleOf(wheel)
  const printed = placardOf(sheet)?.[axle] ?? null
  const placard = printed && printedIn('psi', printed)
  const maximum = tiresOf(sheet)?.[axle]?.sidewallMaximumPsi
  if (placard === null) return { ok: false, refusal: { why: 'no-figure' } }
  const sidewallMaximum: Pressure | null = maximum === undefined ? null : { value: maximum, unit: 'psi' }
  const tire = tireTemperature(surroundings)
  const set = setTarget({
    placard,
    sidewallMaximum,
    outdoor: inKelvin(surroundings.outdoor),
    tire,
    altitude: metersFromFeet(surroundings.altitudeFeet),
  })
  if (!set.ok)
    return {
      ok: false,
      refusal: { why: set.fault, label: set.label, sidewallMaximum: set.sidewallMaximum },
    }
  return {
    ok: true,
    psi: set.target.value,
    placardPsi: placard.value,
    sidewallMaximumPsi: maximum ?? null,
    quality: set.quality,
    capped: set.cappedBy !== null,
    unmeasured: tire === null,
  }
}

/**
 * How far over its target a tire may be left, in psi. A tire that is warm by an amount that nobody measured gets the
 * label's figure as its target, and a warm tire is not bled: what its warmth may add is allowed, as far as an assumed
 * temperature allows at all.
 */
export const overTargetPsi = ({ tire, tires }: Surroundings): number =>
  tire === null && tires !== 'cold' ? usualCaps.overAssumedPsi : usualAfterSetLimits.overPsi

/** A cold tire is at the outdoor temperature. After a drive, the brake heats the rim that the sensor is mounted on. */
const tireTemperature = ({ tire, tires, outdoor }: Surroundings): TireTemperature | null => {
  if (tire) return { kelvin: inKelvin(tire), quality: tires === 'driven' ? 'estimated' : 'measured' }
  return tires === 'cold' ? { kelvin: inKelvin(outdoor), quality: 'assumed' } : null
}
