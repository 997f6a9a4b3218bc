import { kelvin, kilopascals, meters } from '../../evidence/si.ts'
import {
  type AirLoss,
  daysToWarning,
  type GaugedTire,
  isLeak,
  lossBetween,
  lossUncertainty,
} from '../../pressure/air-loss.ts'
import { airPressureAtAltitude } from '../../pressure/air-pressure.ts'
import { atOrBelow } from '../../pressure/threshold.ts'
import { kilopascalsApart } from '../../units/measured.ts'
import { thresholds } from '../thresholds.ts'
import type { Facts } from './facts.ts'
import type { WheelFacts } from './wheel-facts.ts'

/** Air lost since an earlier reading, with both readings corrected to the present altitude. */
export type Loss = AirLoss & {
  /** Whole days until the tire reaches its warning point; null where it has, or where that is not known. */
  readonly daysToLight: number | null
}

/**
 * The fastest loss of each wheel beyond what gauges and temperatures explain. Where all four road tires lost the same,
 * it is the weather or the gauge, and none of them leaks.
 */
export const lossesOf = (facts: Facts): ReadonlyMap<WheelFacts, Loss> => {
  const losses = new Map<WheelFacts, Loss>()
  for (const wheel of facts.wheels) {
    const loss = wheel.label === null ? null : steepestLoss(facts, wheel)
    if (loss !== null) losses.set(wheel, loss)
  }
  const drops = facts.road.flatMap((wheel) => losses.get(wheel)?.drop ?? [])
  const spread = kilopascalsApart(Math.max(...drops) - Math.min(...drops))
  if (drops.length === 4 && atOrBelow(spread, thresholds.alikeSpread))
    for (const wheel of facts.road) losses.delete(wheel)
  return losses
}

const steepestLoss = (facts: Facts, wheel: WheelFacts): Loss | null => {
  if (wheel.judged === null || wheel.temperature === null) return null
  const { air } = facts.place
  const now = { gauge: wheel.judged, temperature: wheel.temperature, air }
  const { units, history } = facts.evidence
  const losses = (history?.earlierReadings ?? []).flatMap((earlier): Loss[] => {
    if (earlier.wheel !== wheel.position || typeof earlier.temperature !== 'number') return []
    if (earlier.pressure < 0 || earlier.daysAgo < thresholds.leakDaysLeast) return []
    const then = {
      gauge: kilopascals(earlier.pressure, units.pressure),
      temperature: kelvin(earlier.temperature, units.temperature),
      air:
        typeof earlier.altitude === 'number'
          ? airPressureAtAltitude(meters(earlier.altitude, units.altitude))
          : air,
    }
    const loss = lossBetween(then, now, earlier.daysAgo)
    if (loss === null || !isLeak(loss, uncertaintyAt(now)) || loss.perDay <= thresholds.leakPerDay) return []
    return [{ ...loss, daysToLight: daysToLight(wheel, loss) }]
  })
  return losses.sort((one, other) => other.perDay - one.perDay)[0] ?? null
}

/** Of a drop, at the tire's own pressure: a harder tire changes more with each degree. */
const uncertaintyAt = (tire: GaugedTire) =>
  lossUncertainty(tire, { gauge: thresholds.gaugeError, temperature: thresholds.temperatureError })

const daysToLight = ({ cold, warn }: WheelFacts, { perDay }: AirLoss): number | null =>
  cold === null || warn === null ? null : daysToWarning(cold, warn, perDay)
