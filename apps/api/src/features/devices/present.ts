import type { Device } from '@bayledger/contract/devices'
import type { DeviceFound } from './store.ts'

export const presentDevice = (
  { id, name, location, key, offlineHours, pins }: DeviceFound,
  sealingKey: string,
  now: Date,
): Device => ({
  deviceId: id,
  name,
  location: { locationId: location.id, name: location.name, timeZone: location.timeZone },
  hasKey: key !== null,
  sealingKey,
  offlineHours,
  pins: pins.map(({ staffId, version }) => ({ staffId, version })),
  now: now.toISOString(),
})
