import { shiftPressure } from '../../pressure/shift-pressure.ts'
import { atOrAbove, atOrBelow } from '../../pressure/threshold.ts'
import { thresholds } from '../thresholds.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** All four road tires low together, by about the same. Pressures in kPa. */
export type AlikeLow = {
  readonly meanDeficit: number
  /** Of the mean deficit, the part that colder air since the last setting explains; null where not known. */
  readonly coldShare: number | null
}

export const alikeLow = (facts: Facts): AlikeLow | null => {
  const deficits = facts.road.flatMap((wheel) => wheel.deficit ?? [])
  if (deficits.length < 4) return null
  const least = Math.min(...deficits)
  if (!atOrAbove(least, thresholds.alikeDeficit)) return null
  if (!atOrBelow(Math.max(...deficits) - least, thresholds.alikeSpread)) return null
  const meanDeficit = mean(deficits)
  return { meanDeficit, coldShare: coldShareOf(facts, meanDeficit) }
}

const coldShareOf = (facts: Facts, meanDeficit: number): number | null => {
  const { lastSetTemperature, outdoor, air } = facts.place
  if (lastSetTemperature === null || outdoor === null) return null
  const lost = facts.road.flatMap((wheel) =>
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
export const predictedOvernight = (facts: Facts, wheel: WheelFacts): number | null => {
  const { overnightLow, air } = facts.place
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
