import { TabletSignature } from '@bayledger/ledger/tablet-signature'
import * as z from 'zod/mini'
import { awaited, endpoint } from './endpoint.ts'
import { Id, Instant, line, Place, StaffMember } from './identity.ts'

/**
 * Who is signed in here, and until when. `now` is the server's clock: a device measures its own offset with it. `awaits`: what has
 * to be done before the session opens anything.
 */
export const Session = z.strictObject({
  kind: z.enum(['desk', 'bay']),
  shop: z.strictObject({ shopId: Id, name: z.string() }),
  staff: StaffMember,
  device: z.nullable(z.strictObject({ deviceId: Id, name: z.string(), location: Place })),
  expiresAt: Instant,
  now: Instant,
  awaits: z.optional(z.enum(awaited)),
})
export type Session = z.infer<typeof Session>

/** What a sign-in with a PIN gives. `pinVersion` is raised with every change of that PIN. */
export const BaySession = z.extend(Session, { pinVersion: z.int() })
export type BaySession = z.infer<typeof BaySession>

export const listShops = endpoint({
  operationId: 'listShops',
  summary: 'The shops that one may sign in to here, by name.',
  method: 'GET',
  path: '/api/shops',
  access: { who: 'public' },
  replies: { 200: z.strictObject({ shops: z.array(z.strictObject({ shopId: Id, name: z.string() })) }) },
  problems: [],
})

export const signInAtDesk = endpoint({
  operationId: 'signInAtDesk',
  summary: 'Sign in at the desk with name and password; name the shop where this service has several.',
  method: 'POST',
  path: '/api/sessions/desk',
  access: { who: 'public' },
  body: z.strictObject({
    shopId: z.optional(Id),
    name: line(80),
    password: z.string().check(z.minLength(1), z.maxLength(200)),
    /** Of the authenticator app, or a recovery code; for whoever has turned that on. */
    code: z.optional(z.string().check(z.maxLength(40))),
  }),
  triesPerMinute: 20,
  replies: { 201: Session },
  problems: ['SIGN_IN_REFUSED', 'SIGN_IN_BLOCKED', 'SECOND_STEP_NEEDED', 'SECOND_STEP_REFUSED'],
})

export const signInAtBay = endpoint({
  operationId: 'signInAtBay',
  summary: 'Sign in, or change to another person, on an enrolled tablet with a PIN.',
  method: 'POST',
  path: '/api/sessions/bay',
  access: { who: 'device' },
  body: z.strictObject({ staffId: Id, pin: z.string().check(z.regex(/^\d{6}$/)) }),
  triesPerMinute: 60,
  replies: { 201: BaySession },
  problems: ['DEVICE_UNKNOWN', 'PIN_REFUSED', 'SIGN_IN_BLOCKED'],
})

export const resumeAtBay = endpoint({
  operationId: 'resumeAtBay',
  summary:
    'Go on with the server as the person whose PIN this tablet checked while the server was out of reach; signed by the tablet.',
  method: 'POST',
  path: '/api/sessions/bay/resumed',
  access: { who: 'device' },
  /** `pinVersion`: of the PIN that was checked. `at`: the server's time, as this tablet has just heard it. */
  body: z.strictObject({ staffId: Id, pinVersion: z.int(), at: Instant, signature: TabletSignature }),
  triesPerMinute: 60,
  replies: { 201: BaySession },
  problems: ['DEVICE_UNKNOWN', 'PIN_REFUSED', 'SIGNATURE_REFUSED', 'SESSION_EXPIRED'],
})

export const proveAgain = endpoint({
  operationId: 'proveAgain',
  summary: 'Prove again that it is you, for what needs a recent proof; good for ten minutes.',
  method: 'POST',
  path: '/api/sessions/current/proof',
  access: { who: 'desk' },
  body: z.strictObject({ password: z.string().check(z.minLength(1), z.maxLength(200)) }),
  triesPerMinute: 20,
  replies: { 204: null },
  problems: ['PASSWORD_REFUSED', 'SIGN_IN_BLOCKED'],
})

/** `lastUsedAt`: when the person last did something there. `browser`: what the browser says of itself. */
export const OpenSession = z.strictObject({
  sessionId: Id,
  kind: z.enum(['desk', 'bay']),
  device: z.nullable(z.string()),
  address: z.nullable(z.string()),
  browser: z.nullable(z.string()),
  startedAt: Instant,
  lastUsedAt: Instant,
  isThisOne: z.boolean(),
})
export type OpenSession = z.infer<typeof OpenSession>

export const listSessions = endpoint({
  operationId: 'listSessions',
  summary: 'Where a person is signed in; one’s own, or as an owner anybody’s. The newest first.',
  method: 'GET',
  path: '/api/people/:id/sessions',
  access: { who: 'desk' },
  params: z.strictObject({ id: Id }),
  replies: { 200: z.strictObject({ sessions: z.array(OpenSession) }) },
  problems: ['RECORD_NOT_FOUND'],
})

export const endOneSession = endpoint({
  operationId: 'endOneSession',
  summary: 'End one session of a person: one’s own, or as an owner anybody’s. One that is over stays over.',
  method: 'DELETE',
  path: '/api/people/:id/sessions/:sessionId',
  access: { who: 'desk' },
  params: z.strictObject({ id: Id, sessionId: Id }),
  replies: { 204: null },
  problems: ['PROOF_NEEDED', 'RECORD_NOT_FOUND'],
})

export const endOtherSessions = endpoint({
  operationId: 'endOtherSessions',
  summary: 'End every session of a person but the one that calls: one’s own, or as an owner anybody’s.',
  method: 'DELETE',
  path: '/api/people/:id/sessions',
  access: { who: 'desk' },
  params: z.strictObject({ id: Id }),
  replies: { 200: z.strictObject({ ended: z.int() }) },
  problems: ['PROOF_NEEDED', 'RECORD_NOT_FOUND'],
})

export const getSession = endpoint({
  operationId: 'getSession',
  summary: 'Who is signed in here.',
  method: 'GET',
  path: '/api/sessions/current',
  access: { who: 'staff', awaiting: awaited },
  replies: { 200: Session },
  problems: [],
})

export const signOut = endpoint({
  operationId: 'signOut',
  summary: 'End the session; the token is worthless from then on.',
  method: 'DELETE',
  path: '/api/sessions/current',
  access: { who: 'staff', awaiting: awaited },
  replies: { 204: null },
  problems: [],
})
