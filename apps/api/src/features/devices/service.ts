import { v7 as newId } from 'uuid'
import type { DeviceActor, StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import type { Deps, Parts } from '../../deps.ts'
import { allowedWords } from '../../words/field-words.ts'
import { codeMinutes, newCode, plainCode } from './policy.ts'
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
  if (!location) throw new AppError({ code: 'ENROLLMENT_CODE_REFUSED', minutes: codeMinutes })
  return { token, deviceId, name, location }
}

export const getDevice = async (deps: Deps, actor: StaffActor | DeviceActor) => {
  const device = actor.deviceId === null ? null : await store.findDevice(deps, actor.deviceId)
  if (!device) throw new AppError({ code: 'DEVICE_UNKNOWN' })
  return device
}
