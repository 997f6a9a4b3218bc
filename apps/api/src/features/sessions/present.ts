import type { Session } from '@bayledger/contract/sessions'
import type { Deps } from '../../deps.ts'
import type { DeviceRow, SessionRow } from './store.ts'

export const presentDevice = (device: DeviceRow) => ({
  deviceId: device.deviceId,
  name: device.name,
  location: { locationId: device.locationId, name: device.locationName, timeZone: device.timeZone },
})

export const presentSession = (session: SessionRow, deps: Deps): Session => ({
  kind: session.kind,
  shop: { shopId: deps.shopId, name: session.shopName },
  staff: { staffId: session.staffId, name: session.staffName, roles: [...session.roles] },
  device: session.device === null ? null : presentDevice(session.device),
  expiresAt: session.expiresAt.toISOString(),
  now: deps.clock.now().toISOString(),
})
