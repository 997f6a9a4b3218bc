import { kelvin, kilopascals } from '../../evidence/si.ts'
import { type AirLoss, daysToWarning, isLeak, lossBetween } from '../../pressure/air-loss.ts'
import { thresholds } from '../thresholds.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Air lost since an earlier reading, with both readings corrected to the present altitude. */
export type Loss = AirLoss & {
  /** Whole days until the tire reaches its warning point; null where it has, or where that is not known. */
  readonly daysToLight: number | null
}

/** The fastest loss that the earlier readings of a wheel show, beyond what gauges and temperatures explain. */
export const steepestLoss = (facts: Facts, wheel: WheelFacts): Loss | null => {
  if (wheel.judged === null || wheel.temperature === null) return null
  const { air } = facts.place
  const now = { gauge: wheel.judged, temperature: wheel.temperature, air }
  const { units, history } = facts.evidence
  const losses = (history?.earlierReadings ?? []).flatMap((earlier): Loss[] => {
    if (earlier.wheel !== wheel.position || typeof earlier.temperature !== 'number') return []
    if (earlier.pressure < 0) return []
    const then = {
      gauge: kilopascals(earlier.pressure, units.pressure),
      temperature: kelvin(earlier.temperature, units.temperature),
      air,
    }
    const loss = lossBetween(then, now, earlier.daysAgo)
    if (loss === null || !isLeak(loss, thresholds.leakDrop) || loss.perDay <= thresholds.leakPerDay) return []
    return [{ ...loss, daysToLight: daysToLight(wheel, loss) }]
  })
  return losses.sort((one, other) => other.perDay - one.perDay)[0] ?? null
}

const daysToLight = ({ cold, warn }: WheelFacts, { perDay }: AirLoss): number | null =>
  cold === null || warn === null ? null : daysToWarning(cold, warn, perDay)
