import { openPool } from '@bayledger/db/pool'
import { revokeDevice } from '../../apps/api/src/features/devices/store/revoke-device.ts'
import type { TestApp } from './app.ts'

/** Puts a tablet out at the shop's present moment, as `npm run device:revoke` does. */
export const putOut = (shop: TestApp, deviceId: string) =>
  revokeDevice(shop.parts.pool, deviceId, shop.clock.now())

/** The same for the service of a journey; gives whether there was such a tablet. */
export const putOutByName = async (serviceUrl: string, name: string): Promise<boolean> => {
  const pool = openPool({ url: serviceUrl, size: 1, onIdleError: () => undefined })
  const { revoked } = await revokeDevice(pool, name, new Date())
  await pool.end()
  return revoked
}
