import type { Distance } from '../quantity.ts'
import { metersPerFoot, metersPerInch, metersPerMile } from './exact-factors.ts'
import { type Meters, type Millimeters, meters, millimeters } from './measured.ts'

/** A short length as entered: tread depth in 32nds of an inch or mm, a rim in inches, a tire's width in mm. */
export type Length = { readonly value: number; readonly unit: 'mm' | '1/32 in' | 'in' }

const millimetersPerInch = metersPerInch * 1_000

const millimetersPer: Readonly<Record<Length['unit'], number>> = {
  mm: 1,
  '1/32 in': millimetersPerInch / 32,
  in: millimetersPerInch,
}

const kilometersPer: Readonly<Record<Distance['unit'], number>> = { km: 1, mi: metersPerMile / 1_000 }

/**
 * An altitude in meters. 820 ft is 249.9 m.
 *
 * @formula ft × 0.3048
 * @units ft to m
 * @source foot 0.3048 m, international yard and pound agreement of 1959 (computed from definition)
 */
export const metersFromFeet = (feet: number): Meters => meters(feet * metersPerFoot)

/**
 * A way driven, in another unit, unrounded; in its own unit it is the figure as entered. 100 km is 62.1 mi.
 *
 * @formula mi × 1.609344 = km
 * @units mi or km to mi or km
 * @source mile 1,609.344 m, international yard and pound agreement of 1959 (computed from definition)
 */
export const distanceIn = (unit: Distance['unit'], distance: Distance): number =>
  unit === distance.unit
    ? distance.value
    : (distance.value * kilometersPer[distance.unit]) / kilometersPer[unit]

/**
 * A short length as entered, in mm. 2/32 in is 1.5875 mm.
 *
 * @formula in × 25.4; 1/32 in × 0.79375
 * @units mm, 1/32 in or in to mm
 * @source inch 25.4 mm, international yard and pound agreement of 1959 (computed from definition)
 */
export const inMillimeters = ({ value, unit }: Length): Millimeters =>
  millimeters(value * millimetersPer[unit])

/**
 * A short length in another unit, unrounded; in its own unit it is the figure as entered. 1.6 mm is 2.016/32 in.
 *
 * @formula as `inMillimeters`, and back by the same factor
 * @units mm, 1/32 in or in to mm, 1/32 in or in
 * @source as for `inMillimeters` (computed from definition)
 */
export const lengthIn = (unit: Length['unit'], length: Length): number =>
  unit === length.unit ? length.value : inMillimeters(length) / millimetersPer[unit]
