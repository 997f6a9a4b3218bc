import { lostToAltitude } from '../../pressure/altitude-change.ts'
import { shiftPressure } from '../../pressure/shift-pressure.ts'
import { atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import {
  type GaugeKilopascals,
  type Kelvin,
  type KilopascalsApart,
  kilopascalsApart,
} from '../../units/measured.ts'
import { thresholds } from '../thresholds.ts'
import { isHotCorner } from './hot-corner.ts'
import type { PlaceFacts } from './place-facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Road tires that are low together, by what colder or denser air and months of seepage do. Pressures in kPa. */
export type ColdGroup = {
  readonly wheels: readonly WheelFacts[]
  readonly meanDeficit: KilopascalsApart
  /** Of the mean deficit, the part that colder air since the last setting explains; null where not known. */
  readonly coldShare: number | null
}

/** A wheel with its lack, scaled to what it would be in a tire with the mean label: cold takes more from a harder tire. */
type Lacking = {
  readonly wheel: WheelFacts
  readonly label: GaugeKilopascals
  readonly deficit: KilopascalsApart
  readonly scale: number
}

/**
 * The tires that are only cold: all four alike; else, where it is known how warm it was when they were set, those
 * that lack what cold alone takes; else three alike of which one would be low by itself. `low`: the wheels that would.
 */
export const readColdGroup = (
  road: readonly WheelFacts[],
  place: PlaceFacts,
  low: readonly WheelFacts[],
): ColdGroup | null => {
  const lacking = lackingWheels(road, place)
  const found =
    allFour(lacking) ??
    asColdPredicts(lacking, place) ??
    threeAlike(lacking, (wheels) => wheels.some(({ wheel }) => low.includes(wheel)))
  return found === null ? null : judgedAsGroup(found, place)
}

const lackingWheels = (road: readonly WheelFacts[], { air }: PlaceFacts): readonly Lacking[] => {
  const known = road.flatMap((wheel) =>
    wheel.carriesSpare || wheel.label === null || wheel.deficit === null
      ? []
      : [{ wheel, label: wheel.label, deficit: wheel.deficit }],
  )
  const meanLabel = mean(known.map(({ label }) => label))
  return known
    .filter(({ wheel, deficit }) => !isHotCorner(road, wheel) && atOrAbove(deficit, thresholds.alikeDeficit))
    .map((one) => ({ ...one, scale: (meanLabel + air) / (one.label + air) }))
}

const scaledSpread = (wheels: readonly Lacking[]): KilopascalsApart => {
  const scaled = wheels.map(({ deficit, scale }) => deficit * scale)
  return kilopascalsApart(Math.max(...scaled) - Math.min(...scaled))
}

const areAlike = (wheels: readonly Lacking[]): boolean =>
  atOrBelow(scaledSpread(wheels), thresholds.alikeSpread)

const allFour = (lacking: readonly Lacking[]): readonly Lacking[] | null =>
  lacking.length === 4 && areAlike(lacking) ? lacking : null

const asColdPredicts = (lacking: readonly Lacking[], place: PlaceFacts): readonly Lacking[] | null => {
  const { lastSetTemperature } = place
  if (lastSetTemperature === null) return null
  const wheels = lacking.filter((one) => {
    const taken = takenByCold(one, lastSetTemperature, place)
    if (taken === null) return false
    const over = kilopascalsApart((one.deficit - taken) * one.scale)
    return (
      atOrAbove(over, kilopascalsApart(-thresholds.coldPredictsUnder)) &&
      atOrBelow(over, thresholds.coldPredictsOver)
    )
  })
  return wheels.length >= 2 ? wheels : null
}

/** Of two such threes, the one with less spread; then the one with the smaller mean deficit. */
const threeAlike = (
  lacking: readonly Lacking[],
  holdsALowTire: (wheels: readonly Lacking[]) => boolean,
): readonly Lacking[] | null => {
  if (lacking.length < 3) return null
  const threes =
    lacking.length === 3 ? [lacking] : lacking.map((left) => lacking.filter((one) => one !== left))
  const [best] = threes
    .filter((wheels) => areAlike(wheels) && holdsALowTire(wheels))
    .sort(
      (one, other) =>
        scaledSpread(one) - scaledSpread(other) || mean(deficitsOf(one)) - mean(deficitsOf(other)),
    )
  return best ?? null
}

/** What neither cold nor descent explains must be within what tires lose in months, or something else is wrong. */
const judgedAsGroup = (wheels: readonly Lacking[], place: PlaceFacts): ColdGroup | null => {
  const meanDeficit = kilopascalsApart(mean(deficitsOf(wheels)))
  const taken = (temperature: Kelvin | null): number | null => {
    if (temperature === null) return null
    const parts = wheels.map((one) => takenByCold(one, temperature, place))
    return parts.some((part) => part === null) ? null : mean(parts.flatMap((part) => part ?? []))
  }
  const known = taken(place.lastSetTemperature)
  const coldShare = known === null ? null : known / meanDeficit
  const descended =
    place.airKnown === null || place.lastSetAir === null
      ? 0
      : Math.max(0, lostToAltitude(place.lastSetAir, place.airKnown))
  const unexplained = meanDeficit - Math.max(0, known ?? taken(thresholds.usualSetting) ?? 0) - descended
  const meanLabel = mean(wheels.map(({ label }) => label))
  const isMostlyCold = coldShare !== null && coldShare >= thresholds.coldShare - 1e-6
  const isWithinSeepage = atOrBelow(
    kilopascalsApart(unexplained),
    kilopascalsApart(thresholds.seepageMost * meanLabel),
  )
  if (!isMostlyCold && !isWithinSeepage) return null
  return { wheels: wheels.map(({ wheel }) => wheel), meanDeficit, coldShare }
}

/** What colder air takes from a tire that was set to its label at a temperature. */
const takenByCold = (
  { label }: Lacking,
  setAt: Kelvin,
  { outdoor, air }: PlaceFacts,
): KilopascalsApart | null =>
  outdoor === null
    ? null
    : kilopascalsApart(
        label - shiftPressure({ gauge: label, from: setAt, to: outdoor, airBefore: air, airAfter: air }),
      )

/** What the gauge would show at the overnight low; null where either is not known. */
export const predictedOvernight = (
  { overnightLow, air }: PlaceFacts,
  wheel: WheelFacts,
): GaugeKilopascals | null => {
  if (wheel.judged === null || wheel.temperature === null || overnightLow === null) return null
  return shiftPressure({
    gauge: wheel.judged,
    from: wheel.temperature,
    to: overnightLow,
    airBefore: air,
    airAfter: air,
  })
}

const deficitsOf = (wheels: readonly Lacking[]): readonly number[] => wheels.map(({ deficit }) => deficit)

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / numbers.length
