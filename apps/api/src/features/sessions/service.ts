import type { Awaited } from '@bayledger/contract/endpoint'
import { sessionText } from '@bayledger/ledger/tablet-signing'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../core/actor.ts'
import { AppError } from '../../core/app-error.ts'
import type { CalledFrom } from '../../core/called-from.ts'
import { noteSecurityEvent } from '../../core/security-events.ts'
import { isSignedBy } from '../../core/tablet-signature.ts'
import { newToken, tokenDigest } from '../../core/tokens.ts'
import { type Deps, forShop, type Parts } from '../../deps.ts'
import { allowedWords } from '../../words/field-words.ts'
import { bayLimits, deskLimits, resumeMs } from './policy.ts'
import { checkPin } from './service/check-secret.ts'
import { enterByPassword } from './service/enter-by-password.ts'
import * as store from './store.ts'

export type SignedIn = { readonly token: string; readonly session: store.SessionRow }
export type SignedInAtDesk = SignedIn & { readonly browserToken: string }
export type SignedInByPin = SignedIn & { readonly pinVersion: number }

/** The cookies of a browser at the desk, from an earlier time; `null`: it has none. */
export type BrowserBefore = { readonly browserToken: string | null; readonly deskToken: string | null }

/** Every shop of this database, by name, for the sign-in screen to choose from. */
export const listShops = (parts: Parts) => store.listShops(parts)

/**
 * Signs a person in at the desk and ends the session that this browser held. An unknown name and a wrong password cost the same
 * and read the same.
 */
export const signInAtDesk = async (
  parts: Parts,
  {
    shopId,
    name,
    password,
    code,
  }: {
    shopId?: string | undefined
    name: string
    password: string
    code?: string | undefined
  },
  { browserToken, deskToken }: BrowserBefore,
  from: CalledFrom,
): Promise<SignedInAtDesk> => {
  const deps = forShop(parts, await shopToEnter(parts, shopId))
  const browser = browserToken ?? newToken()
  const entered = await enterByPassword(deps, {
    name,
    password,
    code,
    browserHash: tokenDigest(browser),
    from,
  })
  return { ...(await openDeskSession(deps, { ...entered, deskToken, from })), browserToken: browser }
}

/** Signs in at the desk whoever has just proven who they are, and ends the session that this browser held. */
export const openDeskSession = async (
  deps: Deps,
  {
    deskToken,
    ...who
  }: Pick<BrowserBefore, 'deskToken'> & Pick<Entering, 'staffId' | 'from' | 'by' | 'awaits'>,
): Promise<SignedIn> => {
  if (deskToken !== null) await store.endDeskSession(deps, tokenDigest(deskToken))
  return openSession(deps, { ...who, deviceId: null, kind: 'desk' })
}

/** Signs a person in on an enrolled tablet and signs the previous person out. */
export const signInAtBay = async (
  deps: Deps,
  deviceToken: string | null,
  { staffId, pin }: { staffId: string; pin: string },
  from: CalledFrom,
): Promise<SignedInByPin> => {
  const device = deviceToken === null ? null : await store.findDevice(deps, tokenDigest(deviceToken))
  if (!device) throw new AppError({ code: 'DEVICE_UNKNOWN' })
  const { deviceId } = device
  const { pinVersion } = await checkPin(deps, { staffId, pin, deviceId, address: from.address })
  return { ...(await openBaySession(deps, staffId, deviceId, from)), pinVersion }
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
  from: CalledFrom,
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
  return { ...(await openBaySession(deps, staffId, deviceId, from)), pinVersion }
}

/** A tablet has one person at a time: whoever was signed in there is signed out. */
const openBaySession = async (
  deps: Deps,
  staffId: string,
  deviceId: string,
  from: CalledFrom,
): Promise<SignedIn> => {
  await store.endSessionsOfDevice(deps, deviceId)
  return openSession(deps, { staffId, deviceId, kind: 'bay', from })
}

export const signOut = async (deps: Deps, actor: StaffActor): Promise<void> => {
  await store.endSession(deps, actor.sessionId)
  const { staffId, deviceId } = actor
  await noteSecurityEvent(deps, deps.prisma, { kind: 'signed-out', staffId, deviceId })
}

export const getSession = async (deps: Deps, sessionId: string): Promise<store.SessionRow> => {
  const session = await store.findSessionById(deps, sessionId)
  if (!session) throw new AppError({ code: 'SESSION_EXPIRED' })
  return session
}

/** The shop that was named; it may be left out where there is only one. */
export const shopToEnter = async (parts: Parts, named: string | undefined): Promise<string> => {
  const shops = await store.listShops(parts)
  const shop =
    named === undefined ? shops.length === 1 && shops[0] : shops.find((one) => one.shopId === named)
  if (shop) return shop.shopId
  throw new AppError(
    { code: 'FIELDS_INVALID', what: named === undefined ? 'shop-not-named' : 'shop-unknown' },
    { fields: [{ field: 'shopId', found: named ?? 'nothing', allowed: allowedWords.shop }] },
  )
}

type Entering = {
  readonly staffId: string
  readonly deviceId: string | null
  readonly kind: 'desk' | 'bay'
  readonly from: CalledFrom
  /** Left out: by what they typed. */
  readonly by?: 'passkey'
  /** Left out: nothing. */
  readonly awaits?: Awaited | null
}

const openSession = async (
  deps: Deps,
  { from: { address, browser }, by, awaits = null, ...who }: Entering,
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
    provenAt: now,
    awaits,
    address,
    browser,
  })
  const { staffId, deviceId } = who
  await noteSecurityEvent(deps, deps.prisma, {
    ...{ kind: 'signed-in', staffId, deviceId, address },
    ...(by === undefined ? {} : { details: { by } }),
  })
  return { token, session: await getSession(deps, id) }
}
