import { sessionText } from '@bayledger/ledger/tablet-signing'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import { isSignedBy } from '../../core/tablet-signature.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import { type Deps, forShop, type Parts } from '../../deps.ts'
import { allowedWords } from '../../words/field-words.ts'
import { bayLimits, deskLimits, freeTries, resumeMs } from './policy.ts'
import { passwordMatches, spendPasswordTime } from './service/hash-password.ts'
import * as store from './store.ts'

export type SignedIn = { readonly token: string; readonly session: store.SessionRow }
export type SignedInByPin = SignedIn & { readonly pinVersion: number }

/** Every shop of this database, by name, for the sign-in screen to choose from. */
export const listShops = (parts: Parts) => store.listShops(parts)

/** Signs a person in at the desk. An unknown name and a wrong password cost the same and read the same. */
export const signInAtDesk = async (
  parts: Parts,
  { shopId, name, password }: { shopId?: string | undefined; name: string; password: string },
): Promise<SignedIn> => {
  const deps = forShop(parts, await shopToEnter(parts, shopId))
  const staff = await store.findStaffBySignInName(deps, name.toLowerCase())
  const who = staff?.id ?? tokenDigest(name.toLowerCase())
  await takeTry(deps, who, 'desk')
  const right = staff?.passwordHash
    ? await passwordMatches(password, staff.passwordHash)
    : await spendPasswordTime(password)
  if (!staff || !right) throw new AppError({ code: 'SIGN_IN_REFUSED' })
  if (!staff.active) throw new AppError({ code: 'SIGN_IN_REFUSED', why: 'left' })
  await store.clearFailures(deps, who, 'desk')
  return openSession(deps, { staffId: staff.id, deviceId: null, kind: 'desk' })
}

/** Signs a person in on an enrolled tablet and signs the previous person out. */
export const signInAtBay = async (
  deps: Deps,
  deviceToken: string | null,
  { staffId, pin }: { staffId: string; pin: string },
): Promise<SignedInByPin> => {
  const device = deviceToken === null ? null : await store.findDevice(deps, tokenDigest(deviceToken))
  if (!device) throw new AppError({ code: 'DEVICE_UNKNOWN' })
  const { pinVersion } = await checkPin(deps, { staffId, pin, place: device.deviceId })
  return { ...(await openBaySession(deps, staffId, device.deviceId)), pinVersion }
}

/**
 * Signs a person in whose PIN the tablet checked while the server was out of reach: the tablet says so by its signature.
 * @throws DEVICE_UNKNOWN, SIGNATURE_REFUSED, SESSION_EXPIRED where that was not just now or somebody else signed in there
 * since, PIN_REFUSED where the person left or has another PIN since
 */
export const resumeAtBay = async (
  deps: Deps,
  deviceId: string | null,
  {
    staffId,
    pinVersion,
    at,
    signature,
  }: { staffId: string; pinVersion: number; at: string; signature: string },
): Promise<SignedInByPin> => {
  if (deviceId === null) throw new AppError({ code: 'DEVICE_UNKNOWN' })
  const publicKey = await store.findTabletKey(deps, deviceId)
  if (publicKey === null) throw new AppError({ code: 'SIGNATURE_REFUSED', why: 'no-key' })
  if (!isSignedBy(publicKey, sessionText({ deviceId, staffId, pinVersion, at }), signature))
    throw new AppError({ code: 'SIGNATURE_REFUSED', why: 'differs' })
  if (Math.abs(deps.clock.now().getTime() - Date.parse(at)) > resumeMs)
    throw new AppError({ code: 'SESSION_EXPIRED' })
  // On a slow network the call may come after the next person has typed their PIN: it must not take the tablet from them.
  if (await store.hasNewerSession(deps, { deviceId, staffId, since: new Date(at) }))
    throw new AppError({ code: 'SESSION_EXPIRED' })
  const staff = await store.findStaffById(deps, staffId)
  if (!staff?.active || staff.pinHash === null || staff.pinVersion !== pinVersion)
    throw new AppError({ code: 'PIN_REFUSED' })
  return { ...(await openBaySession(deps, staffId, deviceId)), pinVersion }
}

/** A tablet has one person at a time: whoever was signed in there is signed out. */
const openBaySession = async (deps: Deps, staffId: string, deviceId: string): Promise<SignedIn> => {
  await store.endSessionsOfDevice(deps, deviceId)
  return openSession(deps, { staffId, deviceId, kind: 'bay' })
}

/**
 * The active person whose PIN this is. Wrong ones are counted by person and place, a tablet's id or `desk-pin`, and
 * after five of them there is a wait. @throws PIN_REFUSED, SIGN_IN_BLOCKED
 */
export const checkPin = async (
  deps: Deps,
  { staffId, pin, place }: { staffId: string; pin: string; place: string },
) => {
  await takeTry(deps, staffId, place)
  const staff = await store.findStaffById(deps, staffId)
  const right = staff?.pinHash ? await passwordMatches(pin, staff.pinHash) : await spendPasswordTime(pin)
  if (!staff || !right) throw new AppError({ code: 'PIN_REFUSED' })
  if (!staff.active) throw new AppError({ code: 'PIN_REFUSED', why: 'left' })
  await store.clearFailures(deps, staffId, place)
  return staff
}

/** Whoever is signed in proves with their password that it is them. @throws PASSWORD_REFUSED, SIGN_IN_BLOCKED */
export const checkPassword = async (
  deps: Deps,
  { staffId, password }: { staffId: string; password: string },
): Promise<void> => {
  await takeTry(deps, staffId, 'desk')
  const staff = await store.findStaffById(deps, staffId)
  const right = staff?.passwordHash
    ? await passwordMatches(password, staff.passwordHash)
    : await spendPasswordTime(password)
  if (!right) throw new AppError({ code: 'PASSWORD_REFUSED' })
  await store.clearFailures(deps, staffId, 'desk')
}

export const signOut = (deps: Deps, actor: StaffActor): Promise<void> =>
  store.endSession(deps, actor.sessionId)

export const getSession = async (deps: Deps, sessionId: string): Promise<store.SessionRow> => {
  const session = await store.findSessionById(deps, sessionId)
  if (!session) throw new AppError({ code: 'SESSION_EXPIRED' })
  return session
}

/** The shop that was named; it may be left out where there is only one. */
const shopToEnter = async (parts: Parts, named: string | undefined): Promise<string> => {
  const shops = await store.listShops(parts)
  const shop =
    named === undefined ? shops.length === 1 && shops[0] : shops.find((one) => one.shopId === named)
  if (shop) return shop.shopId
  throw new AppError(
    { code: 'FIELDS_INVALID', what: named === undefined ? 'shop-not-named' : 'shop-unknown' },
    { fields: [{ field: 'shopId', found: named ?? 'nothing', allowed: allowedWords.shop }] },
  )
}

const openSession = async (
  deps: Deps,
  who: { staffId: string; deviceId: string | null; kind: 'desk' | 'bay' },
): Promise<SignedIn> => {
  const token = newToken()
  const now = deps.clock.now()
  const limits = who.kind === 'desk' ? deskLimits : bayLimits
  const id = newId()
  await store.insertSession(deps, {
    id,
    tokenHash: tokenDigest(token),
    ...who,
    createdAt: now,
    lastSeenAt: now,
    expiresAt: new Date(now.getTime() + limits.absoluteMs),
  })
  return { token, session: await getSession(deps, id) }
}

/** Counts a try as failed before it is looked at, so that a thousand tries at once are not a thousand tries. */
const takeTry = async (deps: Deps, who: string, place: string): Promise<void> => {
  const blocked = await store.takeTry(deps, { who, place, freeTries })
  if (!blocked) return
  const seconds = Math.max(1, Math.ceil((blocked.getTime() - deps.clock.now().getTime()) / 1000))
  throw new AppError({ code: 'SIGN_IN_BLOCKED', seconds }, { retryAfterSeconds: seconds })
}
