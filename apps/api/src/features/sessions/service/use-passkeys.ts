import type { PasskeyAssertion, PasskeyAttestation } from '@bayledger/contract/passkeys'
import { v7 as newId } from 'uuid'
import type { StaffActor } from '../../../core/actor.ts'
import { AppError } from '../../../core/app-error.ts'
import type { CalledFrom } from '../../../core/called-from.ts'
import { noteSecurityEvent } from '../../../core/security-events.ts'
import { newToken, tokenDigest } from '../../../core/tokens.ts'
import { type Deps, forShop, type Parts } from '../../../deps.ts'
import { mostPasskeys, triesOfAddress } from '../policy.ts'
import { type BrowserBefore, openDeskSession, type SignedIn, shopToEnter } from '../service.ts'
import { giveBackTry } from '../store/count-tries.ts'
import * as store from '../store/keep-passkeys.ts'
import { rememberBrowser } from '../store/known-browser.ts'
import { finishSignIn, markProven } from '../store/open-sessions.ts'
import { checkPasskey, makeChallenge, takeChallenge, userIdOf } from './check-passkey.ts'
import { spendTry } from './check-tries.ts'
import { refuseUnlessKnownPerson } from './known-person.ts'
import { type Place, placeOf } from './passkey-place.ts'

export type PasskeyRow = store.PasskeyRow

/** What a passkey has to sign for a sign-in in this browser. @throws PASSKEY_NEEDS_NAME */
export const challengeForSignIn = async (
  parts: Parts,
  shopId: string | undefined,
  browserToken: string | null,
  from: CalledFrom,
) => {
  const { rpId } = placeOf(from, parts.publicAddress)
  const deps = forShop(parts, await shopToEnter(parts, shopId))
  const browser = browserToken ?? newToken()
  const challenge = await makeChallenge(deps, { browserHash: tokenDigest(browser) }, 'sign-in')
  return { asked: { challenge, rpId, credentialIds: [] }, browserToken: browser }
}

/**
 * Signs a person in at the desk whose passkey signed what this browser was given.
 * @throws PASSKEY_NEEDS_NAME, PASSKEY_REFUSED, SIGN_IN_REFUSED, SIGN_IN_BLOCKED
 */
export const signInByPasskey = async (
  parts: Parts,
  { shopId, passkey }: { readonly shopId?: string | undefined; readonly passkey: PasskeyAssertion },
  { browserToken, deskToken }: BrowserBefore,
  from: CalledFrom,
): Promise<SignedIn> => {
  const place = placeOf(from, parts.publicAddress)
  const deps = forShop(parts, await shopToEnter(parts, shopId))
  const { address } = from
  const tries = triesOfAddress(address)
  await spendTry(deps, tries)
  const browserHash = tokenDigest(browserToken ?? '')
  const challenge = await takeChallenge(deps, { browserHash }, 'sign-in')
  const staffId = await checkPasskey(deps, { passkey, challenge, place, address })
  await giveBackTry(deps, tries)
  await rememberBrowser(deps, { staffId, tokenHash: browserHash })
  return openDeskSession(deps, { staffId, deskToken, from, by: 'passkey' })
}

/** What one's own passkey has to sign, to prove again that it is oneself. @throws PASSKEY_NEEDS_NAME */
export const challengeForProof = async (deps: Deps, actor: StaffActor, from: CalledFrom) => {
  const place = placeOf(from, deps.publicAddress)
  const challenge = await makeChallenge(deps, actor, 'proof')
  return askedOf(deps, actor, place, challenge)
}

/** @throws PASSKEY_NEEDS_NAME, PASSKEY_REFUSED */
export const proveByPasskey = async (
  deps: Deps,
  actor: StaffActor,
  passkey: PasskeyAssertion,
  from: CalledFrom,
): Promise<void> => {
  const place = placeOf(from, deps.publicAddress)
  const { staffId, sessionId } = actor
  const { address } = from
  const challenge = await takeChallenge(deps, actor, 'proof')
  await checkPasskey(deps, { passkey, challenge, place, address, staffId })
  await markProven(deps, sessionId)
  const event = { kind: 'proven-again', staffId, address, details: { by: 'passkey' } } as const
  await noteSecurityEvent(deps, deps.prisma, event)
}

/** What a new passkey has to sign, and for whom it is. @throws PASSKEY_NEEDS_NAME, PASSKEY_REFUSED */
export const challengeForPasskey = async (deps: Deps, actor: StaffActor, from: CalledFrom) => {
  const place = placeOf(from, deps.publicAddress)
  await refuseTooMany(deps, actor.staffId)
  const challenge = await makeChallenge(deps, actor, 'adding')
  const asked = await askedOf(deps, actor, place, challenge)
  return { ...asked, userId: userIdOf(actor.staffId), userName: actor.name }
}

/** Keeps the public half of a passkey, which checked who holds it. @throws PASSKEY_NEEDS_NAME, PASSKEY_REFUSED */
export const addPasskey = async (
  deps: Deps,
  actor: StaffActor,
  { name, passkey }: { readonly name: string; readonly passkey: PasskeyAttestation },
  from: CalledFrom,
): Promise<store.PasskeyRow> => {
  const place = placeOf(from, deps.publicAddress)
  const challenge = await takeChallenge(deps, actor, 'adding')
  await refuseTooMany(deps, actor.staffId)
  const made = await credentialIn(passkey, challenge, place)
  if (made === null) throw new AppError({ code: 'PASSKEY_REFUSED', why: 'does-not-fit' })
  const { staffId } = actor
  const kept = {
    ...{ id: newId(), staffId, name, rpId: place.rpId, addedAt: deps.clock.now() },
    credentialId: made.id,
    publicKey: Buffer.from(made.publicKey).toString('base64url'),
    signCount: BigInt(made.counter),
  }
  if (!(await store.insertPasskey(deps, kept)))
    throw new AppError({ code: 'PASSKEY_REFUSED', why: 'kept-before' })
  await finishSignIn(deps, actor.sessionId)
  await noteSecurityEvent(deps, deps.prisma, { kind: 'passkey-added', staffId, address: from.address })
  return { ...kept, shopId: deps.shopId, lastUsedAt: null }
}

/** @throws ACCESS_REFUSED, RECORD_NOT_FOUND */
export const listPasskeys = async (deps: Deps, actor: StaffActor, staffId: string) => {
  await refuseUnlessKnownPerson(deps, actor, staffId)
  return store.listPasskeys(deps, staffId)
}

/** @throws ACCESS_REFUSED, RECORD_NOT_FOUND */
export const removePasskey = async (
  deps: Deps,
  actor: StaffActor,
  { staffId, passkeyId }: { readonly staffId: string; readonly passkeyId: string },
): Promise<void> => {
  await refuseUnlessKnownPerson(deps, actor, staffId)
  if (await store.removePasskey(deps, staffId, passkeyId))
    await noteSecurityEvent(deps, deps.prisma, {
      ...{ kind: 'passkey-removed', staffId: actor.staffId, aboutId: staffId },
    })
}

/** The passkeys of a person that work at this place, and what they have to sign. */
const askedOf = async (deps: Deps, { staffId }: StaffActor, { rpId }: Place, challenge: string) => {
  const here = (await store.listPasskeys(deps, staffId)).filter((one) => one.rpId === rpId)
  return { challenge, rpId, credentialIds: here.map(({ credentialId }) => credentialId) }
}

const refuseTooMany = async (deps: Deps, staffId: string): Promise<void> => {
  if ((await store.listPasskeys(deps, staffId)).length >= mostPasskeys)
    throw new AppError({ code: 'PASSKEY_REFUSED', why: 'too-many' })
}

/** The public half of what a browser made for this challenge and place; `null`: it does not fit them. */
const credentialIn = async ({ id, response }: PasskeyAttestation, challenge: string, place: Place) => {
  const { verifyRegistrationResponse } = await import('@simplewebauthn/server')
  try {
    const { registrationInfo } = await verifyRegistrationResponse({
      response: {
        ...{ id, rawId: id, type: 'public-key', clientExtensionResults: {} },
        response: {
          clientDataJSON: response.clientDataJSON,
          attestationObject: response.attestationObject,
        },
      },
      expectedChallenge: challenge,
      expectedOrigin: place.origin,
      expectedRPID: place.rpId,
      requireUserVerification: true,
    })
    return registrationInfo?.credential ?? null
  } catch {
    // It throws at whatever a browser would not have made.
    return null
  }
}
