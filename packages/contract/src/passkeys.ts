import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line } from './identity.ts'
import { Session } from './sessions.ts'

/** Bytes as a browser writes them (RFC 4648, section 5, without padding). */
const bytes = (longest: number) =>
  z.string().check(z.minLength(1), z.maxLength(longest), z.regex(/^[A-Za-z0-9_-]+$/))

/** `rpId`: the name of the address at which it works. `credentialIds`: which passkeys may answer; none are named at a sign-in. */
const Challenge = z.strictObject({
  challenge: z.string(),
  rpId: z.string(),
  credentialIds: z.array(z.string()),
})
export type PasskeyChallenge = z.infer<typeof Challenge>

/** What the browser gives of a passkey that signed (Web Authentication, `AuthenticationResponseJSON`). */
const Assertion = z.strictObject({
  id: bytes(1_400),
  response: z.strictObject({
    clientDataJSON: bytes(4_000),
    authenticatorData: bytes(4_000),
    signature: bytes(2_000),
    userHandle: z.optional(bytes(100)),
  }),
})
export type PasskeyAssertion = z.infer<typeof Assertion>

/** What the browser gives of a passkey that it made (Web Authentication, `RegistrationResponseJSON`). */
const Attestation = z.strictObject({
  id: bytes(1_400),
  response: z.strictObject({
    clientDataJSON: bytes(4_000),
    attestationObject: bytes(20_000),
  }),
})
export type PasskeyAttestation = z.infer<typeof Attestation>

/** `rpId`: the name of the address at which it works. */
export const Passkey = z.strictObject({
  passkeyId: Id,
  name: z.string(),
  rpId: z.string(),
  addedAt: Instant,
  lastUsedAt: z.nullable(Instant),
})
export type Passkey = z.infer<typeof Passkey>

const ofShop = { shopId: z.optional(Id) }

export const challengeForSignIn = endpoint({
  operationId: 'challengeForSignIn',
  summary: 'What a passkey has to sign for a sign-in in this browser: once, within five minutes.',
  method: 'POST',
  path: '/api/sessions/desk/passkey/challenge',
  access: { who: 'public' },
  body: z.strictObject(ofShop),
  triesPerMinute: 20,
  replies: { 201: Challenge },
  problems: ['PASSKEY_NEEDS_NAME'],
})

export const signInByPasskey = endpoint({
  operationId: 'signInByPasskey',
  summary:
    'Sign in at the desk with a passkey that has checked who holds it, in place of name, password and code.',
  method: 'POST',
  path: '/api/sessions/desk/passkey',
  access: { who: 'public' },
  body: z.strictObject({ ...ofShop, passkey: Assertion }),
  triesPerMinute: 20,
  replies: { 201: Session },
  problems: ['PASSKEY_NEEDS_NAME', 'PASSKEY_REFUSED', 'SIGN_IN_REFUSED', 'SIGN_IN_BLOCKED'],
})

export const challengeForProof = endpoint({
  operationId: 'challengeForProof',
  summary: 'What one’s own passkey has to sign to prove again that it is you: once, within five minutes.',
  method: 'POST',
  path: '/api/sessions/current/proof/passkey/challenge',
  access: { who: 'desk' },
  triesPerMinute: 20,
  replies: { 201: Challenge },
  problems: ['PASSKEY_NEEDS_NAME'],
})

export const proveByPasskey = endpoint({
  operationId: 'proveByPasskey',
  summary: 'Prove again with a passkey that it is you, for what needs a recent proof; good for ten minutes.',
  method: 'POST',
  path: '/api/sessions/current/proof/passkey',
  access: { who: 'desk' },
  body: z.strictObject({ passkey: Assertion }),
  triesPerMinute: 20,
  replies: { 204: null },
  problems: ['PASSKEY_NEEDS_NAME', 'PASSKEY_REFUSED'],
})

export const challengeForPasskey = endpoint({
  operationId: 'challengeForPasskey',
  summary:
    'What a new passkey of one’s own has to sign: once, within five minutes. `credentialIds`: those that there are.',
  method: 'POST',
  path: '/api/own-passkeys/challenge',
  access: { who: 'desk', proof: 'recent', awaiting: ['second-step'] },
  /** `userId` is opaque and stays the same; `userName` is what the browser shows. */
  replies: { 201: z.extend(Challenge, { userId: z.string(), userName: z.string() }) },
  problems: ['PASSKEY_NEEDS_NAME', 'PASSKEY_REFUSED'],
})

export const addPasskey = endpoint({
  operationId: 'addPasskey',
  summary: 'Keep the public half of a passkey of one’s own, under a name; ten at most.',
  method: 'POST',
  path: '/api/own-passkeys',
  access: { who: 'desk', proof: 'recent', awaiting: ['second-step'] },
  body: z.strictObject({ name: line(60), passkey: Attestation }),
  triesPerMinute: 20,
  replies: { 201: Passkey },
  problems: ['PASSKEY_NEEDS_NAME', 'PASSKEY_REFUSED'],
})

export const listPasskeys = endpoint({
  operationId: 'listPasskeys',
  summary: 'The passkeys of a person by name, the oldest first; one’s own, or as an owner anybody’s.',
  method: 'GET',
  path: '/api/people/:id/passkeys',
  access: { who: 'desk', awaiting: ['second-step'] },
  params: z.strictObject({ id: Id }),
  replies: { 200: z.strictObject({ passkeys: z.array(Passkey) }) },
  problems: ['RECORD_NOT_FOUND'],
})

export const removePasskey = endpoint({
  operationId: 'removePasskey',
  summary: 'Remove a passkey of a person: one’s own, or as an owner anybody’s. One that is gone stays gone.',
  method: 'DELETE',
  path: '/api/people/:id/passkeys/:passkeyId',
  access: { who: 'desk', proof: 'recent' },
  params: z.strictObject({ id: Id, passkeyId: Id }),
  replies: { 204: null },
  problems: ['RECORD_NOT_FOUND'],
})
