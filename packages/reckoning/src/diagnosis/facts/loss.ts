import { kelvin, kilopascals } from '../../evidence/si.ts'
import { shiftPressure } from '../../pressure/shift-pressure.ts'
import { above } from '../../pressure/threshold.ts'
import {
  type GaugeKilopascals,
  type Kelvin,
  type KilopascalsApart,
  kilopascalsApart,
} from '../../units/measured.ts'
import { kilopascalsOver } from '../../units/pressure-difference.ts'
import { thresholds } from '../thresholds.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Air lost since an earlier reading, in kPa at 68 °F and the present altitude. */
export type Loss = {
  readonly drop: KilopascalsApart
  readonly days: number
  readonly perDay: KilopascalsApart
  /** Whole days until the tire reaches its warning point; null where it has, or where that is not known. */
  readonly daysToLight: number | null
}

/** The fastest loss that the earlier readings of a wheel show, beyond what gauges and temperatures explain. */
export const steepestLoss = (facts: Facts, wheel: WheelFacts): Loss | null => {
  if (wheel.judged === null || wheel.temperature === null) return null
  const now = atReference(facts, wheel.judged, wheel.temperature)
  const { units, history } = facts.evidence
  const losses = (history?.earlierReadings ?? []).flatMap((earlier): Loss[] => {
    if (earlier.wheel !== wheel.position || typeof earlier.temperature !== 'number') return []
    if (earlier.daysAgo <= 0 || earlier.pressure < 0) return []
    const then = atReference(
      facts,
      kilopascals(earlier.pressure, units.pressure),
      kelvin(earlier.temperature, units.temperature),
    )
    const drop = kilopascalsOver(then, now)
    const perDay = kilopascalsApart(drop / earlier.daysAgo)
    if (!above(drop, thresholds.leakDrop) || perDay <= thresholds.leakPerDay) return []
    return [{ drop, days: earlier.daysAgo, perDay, daysToLight: daysToLight(wheel, perDay) }]
  })
  return losses.sort((one, other) => other.perDay - one.perDay)[0] ?? null
}

const atReference = (facts: Facts, gauge: GaugeKilopascals, temperature: Kelvin): GaugeKilopascals =>
  shiftPressure({
    gauge,
    from: temperature,
    to: thresholds.leakReference,
    airBefore: facts.place.air,
    airAfter: facts.place.air,
  })

const daysToLight = (wheel: WheelFacts, perDay: KilopascalsApart): number | null => {
  if (wheel.cold === null || wheel.warn === null || wheel.cold <= wheel.warn) return null
  return Math.max(1, Math.floor((wheel.cold - wheel.warn) / perDay))
}
