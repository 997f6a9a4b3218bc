import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import type { CalledFrom } from '../../../core/called-from.ts'
import { refuseEasyPassword } from '../../../core/easy-secrets.ts'
import { noteSecurityEvent } from '../../../core/security-events.ts'
import { newSpokenCode, plainCode } from '../../../core/spoken-code.ts'
import { tokenDigest } from '../../../core/tokens.ts'
import { type Deps, forShop, type Parts } from '../../../deps.ts'
import { ownerCode } from '../policy.ts'
import { shopToEnter } from '../service.ts'
import { clearTries, giveBackTry } from '../store/count-tries.ts'
import * as store from '../store/owner-code.ts'
import { findStaffBySignInName } from '../store.ts'
import { noteFailure } from './check-secret.ts'
import { hashPassword, passwordMatches } from './hash-password.ts'
import { spendTriesOfName } from './tries-of-name.ts'

/** When the code of whoever asks was made. */
export const getOwnerCode = async (deps: Deps, { staffId }: StaffActor) => {
  const found = await store.findOwnerCode(deps, staffId)
  return { madeAt: found?.madeAt.toISOString() ?? null }
}

/** Makes the code of whoever asks, in place of the one before; only its digest is kept. */
export const makeOwnerCode = async (deps: Deps, { staffId }: StaffActor) => {
  const code = newSpokenCode(ownerCode.groups, ownerCode.signsEach)
  const madeAt = deps.clock.now()
  await store.keepOwnerCode(deps, { staffId, codeHash: tokenDigest(plainCode(code)), madeAt })
  await noteSecurityEvent(deps, deps.prisma, { kind: 'owner-code-made', staffId })
  return { code, madeAt: madeAt.toISOString() }
}

type Sent = {
  readonly shopId?: string | undefined
  readonly name: string
  readonly code: string
  readonly password: string
}

/**
 * Gives an owner another password by their printed code, which is used up. An unknown name, somebody without a code and a wrong
 * code read the same; a password that is not taken uses nothing up.
 * @throws PASSWORD_UNSUITABLE, OWNER_CODE_REFUSED, SIGN_IN_BLOCKED
 */
export const enterByOwnerCode = async (
  parts: Parts,
  { shopId, name, code, password }: Sent,
  browserToken: string | null,
  { address }: CalledFrom,
): Promise<void> => {
  const deps = forShop(parts, await shopToEnter(parts, shopId))
  await refuseEasyPassword(password)
  const staff = await findStaffBySignInName(deps, name.toLowerCase())
  const browserHash = browserToken === null ? null : tokenDigest(browserToken)
  const { byName, byAddress, waitSeconds } = await spendTriesOfName(deps, {
    name,
    staffId: staff?.id ?? null,
    browserHash,
    address,
  })
  const codeHash = tokenDigest(plainCode(code))
  const kept = staff === null ? null : await store.findOwnerCode(deps, staff.id)
  const refuse = async (): Promise<never> => {
    const aboutId = staff?.id ?? null
    await noteFailure(deps, { kind: 'owner-code-failed', aboutId, deviceId: null, address, waitSeconds })
    throw new AppError({ code: 'OWNER_CODE_REFUSED' })
  }
  if (staff === null || kept?.codeHash !== codeHash) return refuse()
  if (!staff.active || !staff.roles.includes('owner')) return refuse()
  if (staff.passwordHash !== null && (await passwordMatches(password, staff.passwordHash))) {
    await giveBackTry(deps, byName)
    throw new AppError({ code: 'PASSWORD_UNSUITABLE', why: 'as-before' })
  }
  const passwordHash = await hashPassword(password)
  const spent = { staffId: staff.id, codeHash, passwordHash, address, at: deps.clock.now() }
  if (!(await store.spendOwnerCode(deps, spent))) return refuse()
  await clearTries(deps, byName)
  if (byAddress !== null) await giveBackTry(deps, byAddress)
}
