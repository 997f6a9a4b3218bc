import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { noteSecurityEvent } from '../../core/security-events.ts'
import { plainCode } from '../../core/spoken-code.ts'
import { isSignedBy, readPublicKey } from '../../core/tablet-signature.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import { type Deps, forShop, type Parts } from '../../deps.ts'
import { allowedWords } from '../../words/field-words.ts'
import { hashPassword, passwordMatches } from '../sessions/service/hash-password.ts'
import { codeMinutes, mostOpenCodes, newCode } from './policy.ts'
import * as store from './store.ts'

export const createEnrollmentCode = async (
  deps: Deps,
  actor: StaffActor,
  { locationId }: { locationId: string },
) => {
  if (!(await store.findLocation(deps, locationId)))
    throw new AppError(
      { code: 'FIELDS_INVALID', what: 'location' },
      {
        fields: [{ field: 'locationId', found: locationId, allowed: allowedWords.location }],
      },
    )
  const code = newCode()
  const expiresAt = new Date(deps.clock.now().getTime() + codeMinutes * 60_000)
  await store.insertCode(deps, {
    codeHash: await hashPassword(plainCode(code)),
    locationId,
    staffId: actor.staffId,
    expiresAt,
  })
  await noteSecurityEvent(deps, deps.prisma, { kind: 'tablet-code-made', staffId: actor.staffId })
  return { code, expiresAt: expiresAt.toISOString() }
}

/** Enrolls a tablet with the public half of its key, where it made one. @throws ENROLLMENT_CODE_REFUSED */
export const enrollDevice = async (
  parts: Parts,
  { code, name, publicKey }: { code: string; name: string; publicKey?: string | undefined },
) => {
  if (publicKey !== undefined) refuseUnreadableKey(publicKey)
  const token = newToken()
  const deviceId = newId()
  const opened = await findOpenCode(parts, plainCode(code))
  const shopId =
    opened &&
    (await store.enroll(parts, {
      ...opened,
      id: deviceId,
      name,
      tokenHash: tokenDigest(token),
      publicKey: publicKey ?? null,
    }))
  if (shopId === null) throw new AppError({ code: 'ENROLLMENT_CODE_REFUSED', minutes: codeMinutes })
  const deps = forShop(parts, shopId)
  await noteSecurityEvent(deps, deps.prisma, { kind: 'tablet-let-in', staffId: null, aboutId: deviceId })
  return { token, device: await getDevice(deps, deviceId) }
}

/** The open code that was typed; each lies with a salt of its own, and there are few at a time. */
const findOpenCode = async (parts: Parts, typed: string): Promise<store.OpenCode | null> => {
  for (const open of await store.listOpenCodes(parts, mostOpenCodes))
    if (await passwordMatches(typed, open.codeHash)) return open
  return null
}

/** A tablet with what it must know to work out of reach. @throws DEVICE_UNKNOWN */
export const getDevice = async (deps: Deps, deviceId: string | null) => {
  const device = deviceId === null ? null : await store.findDevice(deps, deviceId)
  if (!device) throw new AppError({ code: 'DEVICE_UNKNOWN' })
  return device
}

/** A tablet of any shop, by its id, put out or not. */
export const findAnywhere = (parts: Parts, deviceId: string) => store.findAnywhere(parts, deviceId)

/** Keeps what a tablet says that it has not sent, with when it said so. @throws DEVICE_UNKNOWN */
export const tellUnsent = async (
  deps: Deps,
  deviceId: string | null,
  unsent: { readonly entries: number; readonly photos: number },
): Promise<void> => {
  if (deviceId === null || !(await store.keepUnsent(deps, deviceId, unsent)))
    throw new AppError({ code: 'DEVICE_UNKNOWN' })
}

/** Keeps the key of a tablet that was enrolled without one; the same key again changes nothing. @throws DEVICE_KEY_TAKEN */
export const registerKey = async (deps: Deps, deviceId: string | null, publicKey: string) => {
  const { id } = await getDevice(deps, deviceId)
  refuseUnreadableKey(publicKey)
  if (!(await store.keepKey(deps, id, publicKey))) throw new AppError({ code: 'DEVICE_KEY_TAKEN' })
  return getDevice(deps, id)
}

/** Holds a signature against the key of its tablet, which may be out by now. @throws SIGNATURE_REFUSED */
export const checkSignature = async (
  deps: Pick<Deps, 'prisma' | 'shopId'>,
  deviceId: string,
  text: string,
  signature: string,
): Promise<void> => {
  const publicKey = await store.findKey(deps, deviceId)
  if (publicKey === null) throw new AppError({ code: 'SIGNATURE_REFUSED', why: 'no-key' })
  if (!isSignedBy(publicKey, text, signature))
    throw new AppError({ code: 'SIGNATURE_REFUSED', why: 'differs' })
}

const refuseUnreadableKey = (publicKey: string): void => {
  if (readPublicKey(publicKey) !== null) return
  throw new AppError(
    { code: 'FIELDS_INVALID', what: 'fields', fields: ['publicKey'] },
    { fields: [{ field: 'publicKey', found: publicKey, allowed: allowedWords.publicKey }] },
  )
}
