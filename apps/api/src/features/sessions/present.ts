import type { OpenSession, Session } from '@bayledger/contract/sessions'
import type { OpenSessionRow } from './store/open-sessions.ts'
import type { DeviceRow, SessionRow } from './store.ts'

export const presentDevice = (device: DeviceRow) => ({
  deviceId: device.deviceId,
  name: device.name,
  location: { locationId: device.locationId, name: device.locationName, timeZone: device.timeZone },
})

export const presentOpenSession = (
  { id, kind, device, address, browser, createdAt, lastSeenAt }: OpenSessionRow,
  ownId: string,
): OpenSession => ({
  sessionId: id,
  kind,
  device,
  address,
  browser,
  startedAt: createdAt.toISOString(),
  lastUsedAt: lastSeenAt.toISOString(),
  isThisOne: id === ownId,
})

export const presentSession = (session: SessionRow, now: Date): Session => ({
  kind: session.kind,
  shop: { shopId: session.shopId, name: session.shopName },
  staff: { staffId: session.staffId, name: session.staffName, roles: [...session.roles] },
  device: session.device === null ? null : presentDevice(session.device),
  expiresAt: session.expiresAt.toISOString(),
  now: now.toISOString(),
  ...(session.awaits === null ? {} : { awaits: session.awaits }),
})
