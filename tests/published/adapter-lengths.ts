import { adapterReading, adapterTorque, type OffsetAdapter } from '@bayledger/reckoning/torque/offset-adapter'
import { millimeters, newtonMeters } from '@bayledger/reckoning/units/measured'

/** An adapter measured in inches, as the printed examples have it. */
export const inches = (handle: number, offset: number, degrees = 0): OffsetAdapter => ({
  handle: millimeters(handle * 25.4),
  offset: millimeters(offset * 25.4),
  degrees,
})

/** The reading for a torque, in the torque's own unit: the correction is a ratio and so the same in any. */
export const readingFor = (wanted: number, adapter: OffsetAdapter): number => {
  const reading = adapterReading(newtonMeters(wanted), adapter, 'other')
  if (!reading.ok) throw new Error(reading.do)
  return reading.value
}

/** The torque that a reading gives, in the reading's own unit. */
export const torqueAt = (reading: number, adapter: OffsetAdapter): number => {
  const torque = adapterTorque(newtonMeters(reading), adapter)
  if (!torque.ok) throw new Error(torque.do)
  return torque.value
}
