import { idKey } from '@bayledger/reckoning/sensor/sensor-id'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import type { VehicleCheck } from '../state.ts'

type ModuleRead = NonNullable<VehicleCheck['module']>

/**
 * Whether the vehicle has stored this sensor's ID at this wheel. IDs are compared as numbers: case, leading
 * zeros and, where the vehicle writes them so, decimal digits are ways of writing the same one.
 */
export const isStoredAt = (
  module: ModuleRead | null,
  wheel: WheelPosition,
  sensorId: string | null | undefined,
): boolean => {
  const stored = module?.ids[wheel]
  if (!module || !stored || !sensorId) return false
  return idKey(stored, module.notation ?? 'hex') === idKey(sensorId, 'hex')
}
