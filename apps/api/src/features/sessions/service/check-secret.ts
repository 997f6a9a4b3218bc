import { AppError } from '../../../core/app-error.ts'
import type { CalledFrom } from '../../../core/called-from.ts'
import { noteSecurityEvent } from '../../../core/security-events.ts'
import type { Deps } from '../../../deps.ts'
import { triesAtPin, triesInSession } from '../policy.ts'
import { clearTries } from '../store/count-tries.ts'
import * as store from '../store.ts'
import { spendTry } from './check-tries.ts'
import { passwordMatches, spendPasswordTime } from './hash-password.ts'

/** Where a secret is typed: on a tablet, or at a desk. */
export type TypedAt = Pick<CalledFrom, 'address'> & { readonly deviceId: string | null }

/**
 * The active person whose PIN this is. Wrong ones are counted for the whole shop, and on the tablet where the person signed in
 * last for itself. @throws PIN_REFUSED, SIGN_IN_BLOCKED
 */
export const checkPin = async (
  deps: Deps,
  { staffId, pin, deviceId, address }: TypedAt & { readonly staffId: string; readonly pin: string },
) => {
  const isOwnTablet = deviceId !== null && (await store.findOwnTablet(deps, staffId)) === deviceId
  const tries = triesAtPin(staffId, isOwnTablet)
  const waitSeconds = await spendTry(deps, tries)
  const staff = await store.findStaffById(deps, staffId)
  const right = staff?.pinHash ? await passwordMatches(pin, staff.pinHash) : await spendPasswordTime(pin)
  if (!staff || !right) {
    const aboutId = staff?.id ?? null
    await noteFailure(deps, { kind: 'pin-failed', aboutId, deviceId, address, waitSeconds })
    throw new AppError({ code: 'PIN_REFUSED' })
  }
  if (!staff.active) throw new AppError({ code: 'PIN_REFUSED', why: 'left' })
  await clearTries(deps, tries)
  return staff
}

/** Whoever is signed in proves with their password that it is them. @throws PASSWORD_REFUSED, SIGN_IN_BLOCKED */
export const checkPassword = async (
  deps: Deps,
  who: { readonly staffId: string; readonly sessionId: string; readonly address: string },
  password: string,
): Promise<void> => {
  const tries = triesInSession(who.staffId, who.sessionId)
  const waitSeconds = await spendTry(deps, tries)
  const staff = await store.findStaffById(deps, who.staffId)
  const right = staff?.passwordHash
    ? await passwordMatches(password, staff.passwordHash)
    : await spendPasswordTime(password)
  if (!right) {
    await noteFailure(deps, {
      kind: 'password-failed',
      aboutId: who.staffId,
      deviceId: null,
      address: who.address,
      waitSeconds,
    })
    throw new AppError({ code: 'PASSWORD_REFUSED' })
  }
  await clearTries(deps, tries)
}

/** Keeps that somebody failed, and the wait that begins with it. */
export const noteFailure = async (
  deps: Deps,
  failure: {
    readonly kind: 'sign-in-failed' | 'pin-failed' | 'password-failed' | 'owner-code-failed'
    readonly aboutId: string | null
    readonly deviceId: string | null
    readonly address: string
    readonly waitSeconds: number
  },
): Promise<void> => {
  const { waitSeconds, ...event } = failure
  await noteSecurityEvent(deps, deps.prisma, { staffId: null, ...event })
  if (waitSeconds > 0)
    await noteSecurityEvent(deps, deps.prisma, {
      staffId: null,
      ...event,
      kind: 'wait-began',
      details: { seconds: waitSeconds },
    })
}
