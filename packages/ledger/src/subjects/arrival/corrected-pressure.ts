import type { Pressure } from '@bayledger/reckoning/quantity'
import { pressureIn } from '@bayledger/reckoning/units/pressure-units'
import type { GaugeUsed } from './kinds.ts'

/**
 * What a tire holds by the master gauge: what was read, less what this gauge shows more than the master does. In the unit that
 * was read, to a hundredth. A reading from before gauges carried their offset counts as it was read.
 */
export const correctedPressure = (
  read: Pressure,
  { offsetPsi = 0 }: Pick<GaugeUsed, 'offsetPsi'>,
): Pressure => {
  if (offsetPsi === 0) return read
  const value = read.value - pressureIn(read.unit, { value: offsetPsi, unit: 'psi' })
  return { ...read, value: Math.round(value * 100) / 100 }
}
