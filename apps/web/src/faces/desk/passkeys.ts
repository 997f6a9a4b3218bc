import {
  addPasskey,
  challengeForPasskey,
  challengeForProof,
  challengeForSignIn,
  type PasskeyAssertion,
  type PasskeyChallenge,
  proveByPasskey,
  signInByPasskey,
} from '@bayledger/contract/passkeys'
import type { Session } from '@bayledger/contract/sessions'
import { browserSupportsWebAuthn, startAuthentication, startRegistration } from '@simplewebauthn/browser'
import { call } from '../../lib/api-client.ts'
import { CallProblem } from '../../lib/problem.ts'
import { passkeyTroubles } from './passkey-words.ts'

/** As long as the server waits (Web Authentication, section 15.1). */
const timeout = 300_000

/** Signs in with a passkey that is kept here or on a device nearby. @throws CallProblem */
export const signInWithPasskey = async (shopId: string | null): Promise<Session> => {
  const shop = shopId === null ? {} : { shopId }
  const asked = await call(challengeForSignIn, { body: shop })
  return call(signInByPasskey, { body: { ...shop, passkey: await signatureFor(asked) } })
}

/** Proves again with a passkey that it is oneself. @throws CallProblem */
export const proveWithPasskey = async (): Promise<void> => {
  const passkey = await signatureFor(await call(challengeForProof, {}))
  await call(proveByPasskey, { body: { passkey } })
}

/** Makes a passkey of one's own on a device that the browser finds. @throws CallProblem */
export const makePasskey = async (name: string): Promise<void> => {
  const { challenge, rpId, userId, userName, credentialIds } = await call(challengeForPasskey, {})
  const { id, response } = await fromBrowser(() =>
    startRegistration({
      optionsJSON: {
        ...{ challenge, timeout, attestation: 'none' },
        rp: { id: rpId, name: 'Bayledger' },
        user: { id: userId, name: userName, displayName: userName },
        // EdDSA, ES256, RS256, the best first (the list of IANA for COSE).
        pubKeyCredParams: [-8, -7, -257].map((alg) => ({ type: 'public-key', alg })),
        excludeCredentials: credentialIds.map((known) => ({ type: 'public-key', id: known })),
        authenticatorSelection: {
          residentKey: 'required',
          requireResidentKey: true,
          userVerification: 'required',
        },
      },
    }),
  )
  const { clientDataJSON, attestationObject } = response
  await call(addPasskey, { body: { name, passkey: { id, response: { clientDataJSON, attestationObject } } } })
}

const signatureFor = async ({
  challenge,
  rpId,
  credentialIds,
}: PasskeyChallenge): Promise<PasskeyAssertion> => {
  const { id, response } = await fromBrowser(() =>
    startAuthentication({
      optionsJSON: {
        ...{ challenge, rpId, timeout, userVerification: 'required' },
        allowCredentials: credentialIds.map((known) => ({ type: 'public-key', id: known })),
      },
    }),
  )
  const { clientDataJSON, authenticatorData, signature, userHandle } = response
  return {
    id,
    response: {
      ...{ clientDataJSON, authenticatorData, signature },
      ...(userHandle === undefined ? {} : { userHandle }),
    },
  }
}

/** What the browser does with a passkey, or why it did not, in words. */
const fromBrowser = async <T>(act: () => Promise<T>): Promise<T> => {
  if (!browserSupportsWebAuthn()) throw trouble('unsupported', null)
  try {
    return await act()
  } catch (cause) {
    const name = cause instanceof Error ? cause.name : ''
    throw trouble(
      name === 'InvalidStateError' ? 'known' : name === 'SecurityError' ? 'address' : 'not-used',
      cause,
    )
  }
}

const trouble = (why: keyof typeof passkeyTroubles, cause: unknown): CallProblem =>
  new CallProblem({ status: 0, code: 'PASSKEY_NOT_USED', ...passkeyTroubles[why] }, cause)
