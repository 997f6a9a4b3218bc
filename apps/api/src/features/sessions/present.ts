import type { Session } from '@bayledger/contract/sessions'
import type { DeviceRow, SessionRow } from './store.ts'

export const presentDevice = (device: DeviceRow) => ({
  deviceId: device.deviceId,
  name: device.name,
  location: { locationId: device.locationId, name: device.locationName, timeZone: device.timeZone },
})

export const presentSession = (session: SessionRow, now: Date): Session => ({
  kind: session.kind,
  shop: { shopId: session.shopId, name: session.shopName },
  staff: { staffId: session.staffId, name: session.staffName, roles: [...session.roles] },
  device: session.device === null ? null : presentDevice(session.device),
  expiresAt: session.expiresAt.toISOString(),
  now: now.toISOString(),
})
