import type { Device } from '@bayledger/contract/devices'

export const presentDevice = (
  deviceId: string,
  name: string,
  location: { id: string; name: string; timeZone: string },
): Device => ({
  deviceId,
  name,
  location: { locationId: location.id, name: location.name, timeZone: location.timeZone },
})
