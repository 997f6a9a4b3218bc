import { shiftPressure } from '../../pressure/shift-pressure.ts'
import { atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import { type GaugeKilopascals, type KilopascalsApart, kilopascalsApart } from '../../units/measured.ts'
import { thresholds } from '../thresholds.ts'
import type { PlaceFacts } from './place-facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** All four road tires low together, by about the same. Pressures in kPa. */
export type AlikeLow = {
  readonly meanDeficit: KilopascalsApart
  /** Of the mean deficit, the part that colder air since the last setting explains; null where not known. */
  readonly coldShare: number | null
}

export const readAlikeLow = (road: readonly WheelFacts[], place: PlaceFacts): AlikeLow | null => {
  const deficits = road.flatMap((wheel) => wheel.deficit ?? [])
  if (deficits.length < 4) return null
  const least = kilopascalsApart(Math.min(...deficits))
  if (!atOrAbove(least, thresholds.alikeDeficit)) return null
  if (!atOrBelow(kilopascalsApart(Math.max(...deficits) - least), thresholds.alikeSpread)) return null
  const meanDeficit = kilopascalsApart(mean(deficits))
  return { meanDeficit, coldShare: coldShareOf(road, place, meanDeficit) }
}

const coldShareOf = (
  road: readonly WheelFacts[],
  { lastSetTemperature, outdoor, air }: PlaceFacts,
  meanDeficit: KilopascalsApart,
): number | null => {
  if (lastSetTemperature === null || outdoor === null) return null
  const lost = road.flatMap((wheel) =>
    wheel.label === null
      ? []
      : wheel.label -
        shiftPressure({
          gauge: wheel.label,
          from: lastSetTemperature,
          to: outdoor,
          airBefore: air,
          airAfter: air,
        }),
  )
  return mean(lost) / meanDeficit
}

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

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / numbers.length
