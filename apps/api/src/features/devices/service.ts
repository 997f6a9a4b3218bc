import { v7 as newId } from 'uuid'
import type { DeviceActor, StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import type { Deps, Parts } from '../../deps.ts'
import { codeMinutes, newCode, plainCode } from './policy.ts'
import * as store from './store.ts'

export const createEnrollmentCode = async (
  deps: Deps,
  actor: StaffActor,
  { locationId }: { locationId: string },
) => {
  if (!(await store.findLocation(deps, locationId)))
    throw new AppError('FIELDS_INVALID', 'The place is not one of this shop. Choose one of its places.', {
      fields: [{ field: 'locationId', found: locationId, allowed: 'the id of a place of this shop' }],
    })
  const code = newCode()
  const expiresAt = new Date(deps.clock.now().getTime() + codeMinutes * 60_000)
  await store.insertCode(deps, {
    codeHash: tokenDigest(plainCode(code)),
    locationId,
    staffId: actor.staffId,
    expiresAt,
  })
  return { code, expiresAt: expiresAt.toISOString() }
}

export const enrollDevice = async (parts: Parts, { code, name }: { code: string; name: string }) => {
  const token = newToken()
  const deviceId = newId()
  const location = await store.enroll(parts, {
    codeHash: tokenDigest(plainCode(code)),
    id: deviceId,
    name,
    tokenHash: tokenDigest(token),
  })
  if (!location)
    throw new AppError(
      'ENROLLMENT_CODE_REFUSED',
      `Make a new code at the desk and type it within ${codeMinutes} minutes. A code works once.`,
    )
  return { token, deviceId, name, location }
}

export const getDevice = async (deps: Deps, actor: StaffActor | DeviceActor) => {
  const device = actor.deviceId === null ? null : await store.findDevice(deps, actor.deviceId)
  if (!device)
    throw new AppError('DEVICE_UNKNOWN', 'Enroll this tablet with a code from the desk, then try again.')
  return device
}
