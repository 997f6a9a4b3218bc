import type { Device } from '@bayledger/contract/devices'
import { handInSealedParcel } from '@bayledger/contract/parcels'
import { indexedDbParcels, waitingBoxes } from '../../../ledger/indexed-db-parcels.ts'
import { tabletPins } from '../../../ledger/pin-checks.ts'
import { keepServerKey } from '../../../ledger/server-key.ts'
import { tabletKey } from '../../../ledger/tablet-key.ts'
import { forgetTablet, keepOnce, keptOnce } from '../../../ledger/tablet-memory.ts'
import { tabletVault } from '../../../ledger/vault.ts'
import { call } from '../../../lib/api-client.ts'
import { patterns } from '../../../lib/paths.ts'
import { CallProblem, isCallProblem } from '../../../lib/problem.ts'

const deviceName = 'device'

/** The server knows this tablet: what it says is kept, and what only it could read before is handed in. */
export const contactMade = async (device: Device): Promise<void> => {
  await tabletKey.adopt(device.deviceId)
  await keepServerKey(device.sealingKey)
  const wasShut = await tabletVault.contactMade({
    serverAt: Date.parse(device.now),
    hours: device.offlineHours,
  })
  await tabletPins.keepOnly(device.pins)
  await keepOnce(deviceName, device)
  if (wasShut) await handInBoxes()
}

/** What the server said of this tablet last; rejects with `TABLET_SHUT` where that is too long ago. */
export const keptDevice = async (): Promise<Device | null> => {
  if ((await tabletVault.timeNow()) === null) return null
  if (!(await tabletVault.isOpen())) throw tabletShut()
  return ((await keptOnce(deviceName)) as Device | undefined) ?? null
}

/**
 * The server does not know this tablet any more. It drops its keys, so that nothing on it opens again, and shows nothing but
 * its enrollment, which hands in what is sealed to the server.
 */
export const tabletPutOut = async (): Promise<void> => {
  const wasEnrolled = (await tabletVault.timeNow()) !== null
  await forgetTablet()
  // A new page: nothing of the old one stays in its memory.
  if (wasEnrolled) window.location.replace(patterns.enroll)
}

/** Hands in what is sealed to the server; gives how many parcels it took. What it does not take stays on the tablet. */
export const handInBoxes = (): Promise<number> =>
  navigator.locks.request('bayledger.outbox', async () => {
    let count = 0
    for (const { number, box } of await waitingBoxes()) {
      try {
        await call(handInSealedParcel, { body: { box } })
      } catch (thrown) {
        if (isCallProblem(thrown, 'SEALED_PARCEL_NOT_TAKEN')) continue
        throw thrown
      }
      await indexedDbParcels.drop([number])
      count += 1
    }
    return count
  })

const tabletShut = () =>
  new CallProblem({
    status: 0,
    code: 'TABLET_SHUT',
    title: 'This tablet has been out of the server’s reach for too long.',
    detail:
      'What it holds cannot be read here any more. What was tapped and not sent is kept, and goes to the server as soon as this tablet reaches it. Bring it into the shop’s network.',
  })
