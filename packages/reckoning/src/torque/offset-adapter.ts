import { type Reading, refused, taken } from '../reading.ts'
import { type Millimeters, type NewtonMeters, newtonMeters } from '../units/measured.ts'
import { adapterWords } from '../words/typed-text.ts'

/** An adapter that moves the fastener off the wrench's own drive (a crow-foot), and the wrench that holds it. */
export type OffsetAdapter = {
  /** From the middle of the hand grip to the middle of the square drive. */
  readonly handle: Millimeters
  /** From the drive to the fastener; under zero where the adapter points back toward the hand. */
  readonly offset: Millimeters
  /** Between the adapter and the line of the wrench; 0 in line, 90 across. */
  readonly degrees: number
}

export type AdapterUse = 'road-wheel' | 'other'

export type AdapterFault = 'road-wheel' | 'handle' | 'offset' | 'angle'

/**
 * The reading at which a wrench with an offset adapter gives the torque that is wanted. The torque wanted is its
 * maker's own figure; this only gives the wrench's reading for it. On a road wheel it is refused: a wrong
 * length or a slanted adapter leaves a wheel loose or a stud stretched, and a plain socket needs no correction.
 *
 * @formula T · L / (L + E · cos a).
 * @units N·m; L and E in mm, a in degrees. 80 lbf·ft with L 18 in and E 3 in reads 68.6 lbf·ft.
 * @limits L above 0; E · cos a above -L; a from 0 to 90. Across the wrench (90°) nothing is to be corrected.
 * @source A tool manual and US Army TM 9-254, both read online in 2026. The refusal: this program's own rule.
 */
export const adapterReading = (
  wanted: NewtonMeters,
  adapter: OffsetAdapter,
  use: AdapterUse,
): Reading<NewtonMeters, AdapterFault> => {
  if (use === 'road-wheel') return refused('road-wheel', adapterWords.roadWheel.found, adapterWords.roadWheel)
  const fault = geometryFault(adapter)
  return fault ?? taken(newtonMeters(wanted / leverage(adapter)))
}

/**
 * The torque at the fastener while a wrench with an offset adapter shows a reading: the other way round.
 *
 * @formula T · (L + E · cos a) / L.
 * @units N·m; L and E in mm, a in degrees. A reading of 60 lbf·in with L 12 in and E 2 in gives 70.
 * @limits As for `adapterReading`, but for any use: it says what was done, not what to do.
 * @source US Army TM 9-254, read online in 2026.
 */
export const adapterTorque = (
  reading: NewtonMeters,
  adapter: OffsetAdapter,
): Reading<NewtonMeters, AdapterFault> =>
  geometryFault(adapter) ?? taken(newtonMeters(reading * leverage(adapter)))

const leverage = ({ handle, offset, degrees }: OffsetAdapter): number =>
  (handle + offset * Math.cos((degrees * Math.PI) / 180)) / handle

const geometryFault = (adapter: OffsetAdapter) => {
  const { handle, offset, degrees } = adapter
  if (!(handle > 0 && Number.isFinite(handle)))
    return refused('handle', adapterWords.handle(handle).found, adapterWords.handle(handle))
  if (!(degrees >= 0 && degrees <= 90))
    return refused('angle', adapterWords.angle(degrees).found, adapterWords.angle(degrees))
  if (!Number.isFinite(offset) || leverage(adapter) <= 0)
    return refused('offset', adapterWords.offset(offset, handle).found, adapterWords.offset(offset, handle))
  return null
}
