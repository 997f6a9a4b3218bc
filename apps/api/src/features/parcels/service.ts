import type { AppendResult } from '@bayledger/contract/entries'
import { BoxedParcel, type SignedParcel } from '@bayledger/contract/parcels'
import { refuse } from '@bayledger/ledger/admit/refusal'
import { parcelText } from '@bayledger/ledger/tablet-signing'
import { illFormedIn } from '@bayledger/ledger/well-formed'
import * as z from 'zod/mini'
import { AppError } from '../../core/app-error.ts'
import { openSealed } from '../../core/sealed-content.ts'
import { type Deps, forShop, type Parts } from '../../deps.ts'
import { checkSignature, findAnywhere } from '../devices/service.ts'
import { deliverEntries, refuseEntries } from '../entries/service/deliver-entries.ts'
import { worksHere } from '../staff/service.ts'

/**
 * Delivers what a person wrote on a tablet, whoever is signed in there now. The tablet says by its signature whose it is;
 * the write itself holds that the tablet is not out. @throws DEVICE_UNKNOWN, SIGNATURE_REFUSED
 */
export const handIn = async (
  deps: Deps,
  deviceId: string | null,
  parcel: SignedParcel,
): Promise<AppendResult[]> => {
  if (deviceId === null) throw new AppError({ code: 'DEVICE_UNKNOWN' })
  const { staffId, entries, signature } = parcel
  await checkSignature(deps, deviceId, parcelText({ deviceId, staffId, entries }), signature)
  return deliver(deps, deviceId, parcel)
}

const deliver = async (
  deps: Deps,
  deviceId: string,
  { staffId, entries, sides, heard }: SignedParcel,
): Promise<AppendResult[]> => {
  const writer = { staffId, deviceId, from: 'bay', authority: { by: 'tablet', deviceId } } as const
  return (await worksHere(deps, staffId))
    ? deliverEntries(deps, writer, { entries, sides, heard })
    : refuseEntries(deps, writer, entries, refuse('WRITER_NOT_ACTIVE', {}))
}

/**
 * Takes a parcel that a tablet sealed to the server. Where the tablet was put out, the desk gets the entries in its tray;
 * where it was only out of reach for too long, they are delivered. Only what one of our tablets signed is taken.
 * @throws SEALED_PARCEL_NOT_TAKEN
 */
export const takeSealed = async (parts: Parts, box: string): Promise<void> => {
  const { deviceId, ...parcel } = readBoxed(await openSealed(parts.sealing, box))
  const device = await findAnywhere(parts, deviceId)
  if (!device) throw notTaken()
  const deps = forShop(parts, device.shopId)
  const { staffId, entries, signature } = parcel
  await checkSignature(deps, deviceId, parcelText({ deviceId, staffId, entries }), signature).catch(() => {
    throw notTaken()
  })
  const results = device.isOut
    ? await refuseEntries(deps, { staffId, deviceId }, entries, refuse('TABLET_PUT_OUT', {}))
    : await deliver(deps, deviceId, parcel)
  if (results.some(({ result }) => result === 'not-yet')) throw notTaken()
}

const readBoxed = (content: unknown): z.infer<typeof BoxedParcel> => {
  const read = z.safeParse(BoxedParcel, content)
  if (!read.success || illFormedIn(content).length > 0) throw notTaken()
  return read.data
}

const notTaken = () => new AppError({ code: 'SEALED_PARCEL_NOT_TAKEN' })
