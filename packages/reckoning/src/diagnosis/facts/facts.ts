import type { Evidence, LightBehavior } from '../../evidence/evidence-schema.ts'
import { readingOrder, type WheelPosition } from '../../wheels.ts'
import { type ColdGroup, readColdGroup } from './cold-group.ts'
import { type DisplayUnits, displayUnits } from './display-units.ts'
import { type EventFacts, readEvents } from './event-facts.ts'
import { isPlacardVerified } from './label-facts.ts'
import { type LowTires, readLowTires } from './low-tires.ts'
import { isNotPossible } from './not-checkable.ts'
import { type Offsets, readOffsets } from './offsets.ts'
import { type PlaceFacts, readPlace } from './place-facts.ts'
import { wheelsWithDoubtfulSensor } from './sensor-doubts.ts'
import { readStored, type StoredFacts } from './stored-facts.ts'
import { unsupportedGauges } from './unsupported-gauge.ts'
import { readWheels, type WheelFacts } from './wheel-facts.ts'

/** Evidence in SI units with everything derived from it that more than one rule needs. */
export type Facts = {
  readonly evidence: Evidence
  readonly display: DisplayUnits
  readonly system: 'direct' | 'indirect' | 'none' | 'unknown'
  /** The vehicle may have sensors in its wheels: it is not known to have none. */
  readonly sensing: boolean
  readonly spareMonitored: boolean
  readonly placardVerified: boolean
  readonly behavior: LightBehavior | null
  readonly lampCheck: 'lights' | 'dark' | null
  readonly wheels: readonly WheelFacts[]
  readonly road: readonly WheelFacts[]
  readonly spare: WheelFacts | null
  /** Wheels on which the vehicle listens for a sensor. */
  readonly monitored: readonly WheelFacts[]
  readonly wheel: (position: WheelPosition) => WheelFacts | undefined
  readonly place: PlaceFacts
  readonly offsets: Offsets | null
  readonly lowTires: LowTires
  readonly coldGroup: ColdGroup | null
  readonly events: EventFacts
  readonly stored: StoredFacts
  readonly codes: NonNullable<NonNullable<Evidence['controlModule']>['codes']>
  /** Recorded as not possible to check. */
  readonly notPossible: (field: string) => boolean
}

export const readFacts = (evidence: Evidence): Facts => {
  const system = evidence.vehicle?.system ?? 'unknown'
  const sensing = system !== 'indirect' && system !== 'none'
  const spareMonitored =
    sensing && evidence.vehicle?.spareMonitored === true && evidence.vehicle.spare !== 'none'
  const events = readEvents(evidence)
  const place = readPlace(evidence)
  const positions = evidence.vehicle?.spare === 'none' ? readingOrder.slice(0, 4) : readingOrder
  const wheels = readWheels({ evidence, place, events, sensing }, positions)
  const road = wheels.filter((wheel) => wheel.road)
  const unsupported = unsupportedGauges({ road, events })
  const offsets = readOffsets(
    road.filter((wheel) => !unsupported.includes(wheel)),
    place.airKnown,
  )
  const behavior = evidence.light?.behavior ?? null
  const lowTires = readLowTires(road, behavior, wheelsWithDoubtfulSensor({ road, offsets, events }))
  const heard = new Set(wheels.flatMap((wheel) => wheel.sensor.idKey ?? []))
  return {
    evidence,
    display: displayUnits(evidence.units),
    system,
    sensing,
    spareMonitored,
    placardVerified: isPlacardVerified(evidence),
    behavior,
    lampCheck: evidence.light?.lampCheck ?? null,
    wheels,
    road,
    spare: wheels.find((wheel) => !wheel.road) ?? null,
    monitored: wheels.filter((wheel) => wheel.monitored),
    wheel: (position) => wheels.find((wheel) => wheel.position === position),
    place,
    offsets,
    lowTires,
    coldGroup: readColdGroup(road, place, [...lowTires.firm, ...lowTires.likely]),
    events,
    stored: readStored(evidence, spareMonitored, heard),
    codes: evidence.controlModule?.codes ?? [],
    notPossible: (field) => isNotPossible(evidence, field),
  }
}
