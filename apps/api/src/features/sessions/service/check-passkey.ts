import { randomBytes } from 'node:crypto'
import type { PasskeyAssertion } from '@bayledger/contract/passkeys'
import { AppError } from '../../../core/app-error.ts'
import { noteSecurityEvent } from '../../../core/security-events.ts'
import type { Deps } from '../../../deps.ts'
import { challengeBytes, challengeMs, type Holder, type Purpose } from '../policy.ts'
import * as store from '../store/keep-passkeys.ts'
import type { Place } from './passkey-place.ts'

/** What has to be signed next, good once. */
export const makeChallenge = async (deps: Deps, holder: Holder, purpose: Purpose): Promise<string> => {
  const challenge = randomBytes(challengeBytes).toString('base64url')
  const expiresAt = new Date(deps.clock.now().getTime() + challengeMs)
  await store.keepChallenge(deps, { holder, purpose, challenge, expiresAt })
  return challenge
}

/** What was to be signed. It is used up, however the check ends. @throws PASSKEY_REFUSED */
export const takeChallenge = async (deps: Deps, holder: Holder, purpose: Purpose): Promise<string> => {
  const challenge = await store.takeChallenge(deps, holder, purpose)
  if (challenge === null) throw new AppError({ code: 'PASSKEY_REFUSED', why: 'too-late' })
  return challenge
}

type Signed = {
  readonly passkey: PasskeyAssertion
  readonly challenge: string
  readonly place: Place
  readonly address: string
  /** Whose it has to be; left out: anybody's who works here. */
  readonly staffId?: string
}

/**
 * Whose passkey signed the challenge, at this place and after it had checked who holds it.
 * @throws PASSKEY_REFUSED, SIGN_IN_REFUSED where the person has left
 */
export const checkPasskey = async (deps: Deps, signed: Signed): Promise<string> => {
  const { passkey, address } = signed
  const found = await store.findByCredential(deps, passkey.id)
  const refuse = async (why: 'unknown' | 'does-not-fit' | 'went-back'): Promise<never> => {
    const kind = why === 'went-back' ? 'passkey-went-back' : 'passkey-failed'
    const event = { kind, staffId: null, aboutId: found?.staffId ?? null, address } as const
    await noteSecurityEvent(deps, deps.prisma, event)
    throw new AppError({ code: 'PASSKEY_REFUSED', why })
  }
  if (found === null || (signed.staffId !== undefined && found.staffId !== signed.staffId))
    return refuse('unknown')
  const signCount = await signCountOf(signed, found)
  if (signCount === null) return refuse('does-not-fit')
  if (!found.staff.active) throw new AppError({ code: 'SIGN_IN_REFUSED', why: 'left' })
  if (!(await store.countSignature(deps, found.id, signCount))) return refuse('went-back')
  return found.staffId
}

/** How often it has signed, as it says; `null`: this is not its signature of what was asked, there and for its person. */
const signCountOf = async (
  { passkey: { id, response }, challenge, place }: Signed,
  kept: store.PasskeyRow,
): Promise<bigint | null> => {
  const { userHandle } = response
  if (kept.rpId !== place.rpId) return null
  if (userHandle !== undefined && userHandle !== userIdOf(kept.staffId)) return null
  const { verifyAuthenticationResponse } = await import('@simplewebauthn/server')
  try {
    const { verified, authenticationInfo } = await verifyAuthenticationResponse({
      response: {
        ...{ id, rawId: id, type: 'public-key', clientExtensionResults: {} },
        response: {
          clientDataJSON: response.clientDataJSON,
          authenticatorData: response.authenticatorData,
          signature: response.signature,
        },
      },
      expectedChallenge: challenge,
      expectedOrigin: place.origin,
      expectedRPID: place.rpId,
      // The count is held against the one that is kept in the statement that keeps the new one.
      credential: { id, publicKey: new Uint8Array(Buffer.from(kept.publicKey, 'base64url')), counter: 0 },
      requireUserVerification: true,
    })
    return verified ? BigInt(authenticationInfo.newCounter) : null
  } catch {
    // It throws at whatever a passkey would not have signed.
    return null
  }
}

/** Who a passkey is for, as it keeps it: opaque, and nobody's name (Web Authentication, section 14.6.1). */
export const userIdOf = (staffId: string): string => Buffer.from(staffId).toString('base64url')
