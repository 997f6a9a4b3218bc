import {
  type AbsoluteKilopascals,
  type GaugeKilopascals,
  gaugeKilopascals,
  type KilopascalsApart,
  kilopascalsApart,
} from './measured.ts'

/** How much the first of two pressures of one kind is over the second; negative where it is under it. */
export const kilopascalsOver = <Kind extends GaugeKilopascals | AbsoluteKilopascals>(
  one: Kind,
  other: Kind,
): KilopascalsApart => kilopascalsApart(one - other)

/** A gauge pressure with a difference added. */
export const raisedBy = (pressure: GaugeKilopascals, difference: KilopascalsApart): GaugeKilopascals =>
  gaugeKilopascals(pressure + difference)

/** How far apart, whichever is higher. */
export const magnitude = (difference: KilopascalsApart): KilopascalsApart =>
  kilopascalsApart(Math.abs(difference))
