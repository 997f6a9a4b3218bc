import type { EventKind, WheelEvidence } from '../../evidence/evidence-schema.ts'
import type { Axle, WheelPosition } from '../../wheels.ts'

/** What can be checked at each wheel. */
export type WheelField = keyof WheelEvidence

/** What can be checked once for the vehicle, its light, its surroundings and its history. */
export type VehicleField =
  | `light.${'lampCheck' | 'behavior' | 'reported'}`
  | `vehicle.${'system' | 'sensorFrequencyMHz' | 'pressureDisplay' | 'sensorMounting'}`
  | `vehicle.${'spare' | 'spareMonitored'}`
  | `vehicle.placard.${Axle | 'verified'}`
  | `vehicle.${'warnAt' | 'loadClass' | 'casing'}.${Axle}`
  | `vehicle.sidewallMaximum.${'front' | 'rear'}`
  | `controlModule.${'state' | 'notation' | 'ids' | 'codes'}`
  | 'strayIds'
  | `history.${'earlierReadings' | 'idsOnOtherVehicles' | 'ourWorkOn' | 'partsUnderWarranty'}`
  | `surroundings.${'outdoor' | 'tires' | 'tireTemperature' | 'altitude' | 'overnightLow' | 'minutesDriven'}`
  | `surroundings.lastSet.${'temperature' | 'altitude'}`

/** Events that happened to one tire or corner, so that it is worth asking which one. */
export type EventOfOneWheel = 'collision' | 'sealant' | 'driven-low'

/** Every field that a diagnosis may list as not checked. */
export type CheckedField =
  | VehicleField
  | `wheels.${WheelPosition}.${WheelField}`
  | `controlModule.ids.${WheelPosition}`
  | `events.${EventKind}`
  | `events.${EventOfOneWheel}.wheel`
