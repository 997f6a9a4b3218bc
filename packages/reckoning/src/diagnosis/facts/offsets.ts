import { shownTooLowBySeaLevelSensor } from '../../pressure/altitude-change.ts'
import { above, atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import { type AbsoluteKilopascals, type KilopascalsApart, kilopascalsApart } from '../../units/measured.ts'
import { kilopascalsOver, magnitude } from '../../units/pressure-difference.ts'
import { thresholds } from '../thresholds.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Gauge less sensor, in kPa, over the road wheels whose sensor gave a pressure; at least three of them. */
export type Offsets = {
  readonly median: KilopascalsApart
  readonly alike: boolean
  /** The wheels whose offset differs from that of the rest. */
  readonly apart: readonly WheelFacts[]
  /** All alike and far enough from zero to mean something. */
  readonly notable: boolean
  /** Notable, and as much as a sensor that refers to sea level reads low here; null where altitude is unknown. */
  readonly ofAltitude: boolean | null
}

/** `air`: pressure of the open air here, null where the altitude is not known. */
export const readOffsets = (road: readonly WheelFacts[], air: AbsoluteKilopascals | null): Offsets | null => {
  const pairs = road.flatMap((wheel) => {
    const offset = offsetOf(wheel)
    return offset === null ? [] : [{ wheel, offset }]
  })
  if (pairs.length < 3) return null
  const offsets = pairs.map((pair) => pair.offset).sort((one, other) => one - other)
  const median = medianOf(offsets)
  const spread = kilopascalsApart(Math.max(...offsets) - Math.min(...offsets))
  const alike = atOrBelow(spread, thresholds.offsetsAlike)
  const notable = alike && atOrAbove(magnitude(median), thresholds.offsetNotable)
  const apart = pairs.filter(({ offset }) =>
    atOrAbove(kilopascalsApart(Math.abs(offset - median)), thresholds.offsetDiffers),
  )
  return {
    median,
    alike,
    apart: above(spread, thresholds.offsetsAlike) ? apart.map(({ wheel }) => wheel) : [],
    notable,
    ofAltitude: air === null ? null : notable && isOfAltitude(median, air),
  }
}

export const offsetOf = (wheel: WheelFacts): KilopascalsApart | null =>
  wheel.judged === null || wheel.sensor.pressure === null
    ? null
    : kilopascalsOver(wheel.judged, wheel.sensor.pressure)

const isOfAltitude = (median: KilopascalsApart, air: AbsoluteKilopascals): boolean =>
  atOrBelow(
    kilopascalsApart(Math.abs(median - shownTooLowBySeaLevelSensor(air))),
    thresholds.offsetOfAltitudeWithin,
  )

const medianOf = (sorted: readonly KilopascalsApart[]): KilopascalsApart => {
  const middle = sorted.length / 2
  const lower = sorted[Math.ceil(middle) - 1] ?? 0
  const upper = sorted[Math.floor(middle)] ?? 0
  return kilopascalsApart((lower + upper) / 2)
}
