import { BoxedPhoto } from '@bayledger/contract/photos'
import { openBytes } from '@bayledger/ledger/sealed-bytes'
import { photoText } from '@bayledger/ledger/tablet-signing'
import * as z from 'zod/mini'
import { AppError } from '../../../core/app-error.ts'
import { openSealed } from '../../../core/sealed-content.ts'
import { forShop, type Parts } from '../../../deps.ts'
import { checkSignature, findAnywhere } from '../../devices/service.ts'
import { keepPhoto } from '../service.ts'

/**
 * Takes a photo that a tablet sealed to the server. Only what one of our tablets signed is taken, and only a photo that an
 * entry names. @throws SEALED_PHOTO_NOT_TAKEN
 */
export const takeSealedPhoto = async (
  parts: Parts,
  { box, bytes }: { readonly box: string; readonly bytes: string },
): Promise<void> => {
  const { deviceId, digest, key, signature } = readBoxed(await openSealed(parts.sealing, box))
  const device = await findAnywhere(parts, deviceId)
  if (!device) throw notTaken()
  const deps = forShop(parts, device.shopId)
  await checkSignature(deps, deviceId, photoText({ deviceId, digest }), signature).catch(() => {
    throw notTaken()
  })
  const photo = await openBytes({ key, bytes: new Uint8Array(Buffer.from(bytes, 'base64')) })
  if (photo === null || !(await keepPhoto(deps, digest, photo))) throw notTaken()
}

const readBoxed = (content: unknown): z.infer<typeof BoxedPhoto> => {
  const read = z.safeParse(BoxedPhoto, content)
  if (!read.success) throw notTaken()
  return read.data
}

const notTaken = () => new AppError({ code: 'SEALED_PHOTO_NOT_TAKEN' })
