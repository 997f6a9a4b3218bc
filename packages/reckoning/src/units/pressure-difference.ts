import {
  type AbsoluteKilopascals,
  type GaugeKilopascals,
  gaugeKilopascals,
  type KilopascalsApart,
  kilopascalsApart,
} from './measured.ts'

/**
 * How much the first of two pressures of one kind is over the second; negative where it is under it.
 *
 * @formula first − second
 * @units kPa; both gauge or both absolute, never one of each
 * @source definition of a difference (computed from definition)
 */
export const kilopascalsOver = <Kind extends GaugeKilopascals | AbsoluteKilopascals>(
  one: Kind,
  other: Kind,
): KilopascalsApart => kilopascalsApart(one - other)

/**
 * A gauge pressure with a difference added.
 *
 * @formula pressure + difference
 * @units kPa
 * @source definition of a sum (computed from definition)
 */
export const raisedBy = (pressure: GaugeKilopascals, difference: KilopascalsApart): GaugeKilopascals =>
  gaugeKilopascals(pressure + difference)

/**
 * How far apart two pressures are, whichever is higher.
 *
 * @formula |difference|
 * @units kPa
 * @source definition of a magnitude (computed from definition)
 */
export const magnitude = (difference: KilopascalsApart): KilopascalsApart =>
  kilopascalsApart(Math.abs(difference))
