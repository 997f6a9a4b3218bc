import type { Evidence } from '../../evidence/evidence-schema.ts'
import { fromKilopascals } from '../../evidence/si.ts'
import { type GaugedTire, lossUncertainty } from '../../pressure/air-loss.ts'
import { shortfallSince } from '../../pressure/shortfall.ts'
import { above, atOrAbove } from '../../pressure/threshold.ts'
import type { KilopascalsApart } from '../../units/measured.ts'
import { magnitude } from '../../units/pressure-difference.ts'
import { roadPositions, type WheelPosition } from '../../wheels.ts'
import { thresholds } from '../thresholds.ts'
import { readEvents } from './event-facts.ts'
import { type PlaceFacts, readPlace } from './place-facts.ts'
import { readWheels, type WheelFacts } from './wheel-facts.ts'

/** What one tire on the road lacks of its label figure once it is cold, psi to a tenth, and why, or what is missing to say so. */
export type WheelShortfall = {
  readonly wheel: WheelPosition
  readonly lacks: number
  readonly why: ShortfallParts | 'outdoor-not-known' | 'setting-not-known'
}

/** Psi to a tenth; together they are what the tire lacks. */
export type ShortfallParts = {
  /** Negative: it is warmer than when the tire was set. */
  readonly byTemperature: number
  readonly byAltitude: number
  /** Negative: it was set higher, or air was added since. */
  readonly byLostAir: number
  /** The loss is more than gauges and thermometers can be off by; `most` is by how much they can. */
  readonly isBeyondError: boolean
  readonly most: number
}

/**
 * Each road tire that lacks 2 psi or more, which nobody takes for a gauge's error, in reading order: what colder air took, what a lower place
 * took, and what is air that got out. It takes the tire to have been set to the label when the pressures were last set.
 *
 * @formula `shortfallSince` from the label at the temperature when last set to the cold gauge value outdoors now
 * @units psi
 * @limits nothing is said of a tire without a gauge value or a verified label, nor of a temporary spare at its place
 * @source as `shortfallSince`; how far readings may be off is common practice, no source
 */
export const wheelShortfalls = (evidence: Evidence): readonly WheelShortfall[] => {
  const place = readPlace(evidence)
  const { system } = evidence.vehicle ?? {}
  const sensing = system !== 'indirect' && system !== 'none'
  const wheels = readWheels({ evidence, place, events: readEvents(evidence), sensing }, roadPositions)
  return wheels.flatMap((wheel) => shortfallAt(wheel, place) ?? [])
}

const shortfallAt = (
  { label, cold, deficit, position, carriesSpare }: WheelFacts,
  place: PlaceFacts,
): WheelShortfall | null => {
  if (carriesSpare || label === null || cold === null || deficit === null) return null
  if (!atOrAbove(deficit, thresholds.underPlacard)) return null
  const { outdoor, air, airKnown, lastSetTemperature, lastSetAir } = place
  const lacks = { wheel: position, lacks: tenth(deficit) }
  if (outdoor === null) return { ...lacks, why: 'outdoor-not-known' }
  if (lastSetTemperature === null) return { ...lacks, why: 'setting-not-known' }
  const setAir = airKnown === null || lastSetAir === null ? air : lastSetAir
  const set = { gauge: label, temperature: lastSetTemperature, air: setAir }
  return { ...lacks, why: partsOf(set, { gauge: cold, temperature: outdoor, air }) }
}

/** Rounded so that the parts still add to the whole. */
const partsOf = (set: GaugedTire, now: GaugedTire): ShortfallParts => {
  const parts = shortfallSince(set, now)
  const most = lossUncertainty(now, {
    gauge: thresholds.gaugeError,
    temperature: thresholds.temperatureError,
  })
  const byTemperature = tenth(parts.byTemperature)
  const byAltitude = tenth(parts.byAltitude)
  return {
    byTemperature,
    byAltitude,
    byLostAir: Math.round((tenth(parts.total) - byTemperature - byAltitude) * 10) / 10 + 0,
    isBeyondError: above(magnitude(parts.byLostAir), most),
    most: tenth(most),
  }
}

/** A difference in kPa as psi, to a tenth; never −0. */
const tenth = (kilopascals: KilopascalsApart): number =>
  Math.round(fromKilopascals(kilopascals, 'psi') * 10) / 10 + 0
