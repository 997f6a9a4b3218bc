import { inMillimeters } from '../units/length-units.ts'
import { type Millimeters, millimeters } from '../units/measured.ts'

/** A wheel by its rim's width between the flanges and its offset: from the rim's middle outward to the face on the hub. */
export type WheelRim = { readonly widthInches: number; readonly offset: Millimeters }

/** Where another rim comes to lie; out is away from the vehicle. */
export type OffsetShift = {
  /** How far the rim's middle, and the tire's, moves out. */
  readonly out: Millimeters
  /** How much wider the track of an axle gets with two of them. */
  readonly track: Millimeters
  /** How far the rim's outer edge moves out, toward the fender. */
  readonly outerEdge: Millimeters
  /** How far its inner edge moves in, toward strut and brake. */
  readonly innerEdge: Millimeters
}

/**
 * How far another rim moves the tire out or in. A smaller offset moves it out and widens the track by twice as much; the
 * scrub radius grows by what the middle moves out, so that the steering pulls differently under braking and on a soft edge.
 *
 * @formula out = offset − offset of the other; track = 2 · out; outer edge = out + half of what the other is wider; inner edge =
 * half of what the other is wider − out
 * @units mm; in for a rim's width
 * @limits of the rim, not of the tire on it, which is wider; a tire of another diameter moves the scrub radius too. Whether the
 * result clears body, strut and brake is to be tried on the vehicle; the vehicle maker's figures govern
 * @source offset = backspace − width / 2: a wheel seller's page on measuring rims (read); the rest follows (computed from
 * definition)
 */
export const offsetShift = (now: WheelRim, other: WheelRim): OffsetShift => {
  const out = now.offset - other.offset
  const half = inMillimeters({ value: (other.widthInches - now.widthInches) / 2, unit: 'in' })
  return {
    out: millimeters(out),
    track: millimeters(2 * out),
    outerEdge: millimeters(half + out),
    innerEdge: millimeters(half - out),
  }
}
