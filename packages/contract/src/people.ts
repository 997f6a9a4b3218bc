import * as z from 'zod/mini'
import { csvEndpoints } from './csv-endpoints.ts'
import { awaited, endpoint } from './endpoint.ts'
import { Id, line, Role, SignInName } from './identity.ts'
import { recordEndpoints, recordOf } from './record.ts'

/** A person of the shop. `active`: works here; whoever left keeps their name on what they wrote. */
export const PersonContent = z.strictObject({
  name: line(80),
  signInName: SignInName,
  roles: z.array(Role).check(
    z.minLength(1),
    z.refine((one) => new Set(one).size === one.length, 'each role once'),
  ),
  active: z.boolean(),
})
export type PersonContent = z.infer<typeof PersonContent>

/** Whether they can sign in, and how often each secret was set; never what it is. */
const facts = z.strictObject({ hasPassword: z.boolean(), hasPin: z.boolean() })

const base = recordEndpoints({
  name: { one: 'Person', all: 'People' },
  words: { one: 'person', all: 'people' },
  path: '/api/people',
  roles: ['owner'],
  content: PersonContent,
  facts,
  proof: 'recent',
})

const Person = recordOf(PersonContent, facts)
export type Person = z.infer<typeof Person>

export const people = {
  ...base,
  create: endpoint({ ...base.create, problems: [...base.create.problems, 'SIGN_IN_NAME_TAKEN'] }),
  put: endpoint({ ...base.put, problems: [...base.put.problems, 'SIGN_IN_NAME_TAKEN', 'LAST_OWNER'] }),
}

/** Neither PIN nor password is in the file, and none comes in with it. */
export const peopleCsv = csvEndpoints({
  name: 'People',
  words: 'people',
  path: '/api/people',
  roles: ['owner'],
  problems: ['SIGN_IN_NAME_TAKEN', 'LAST_OWNER'],
  proof: 'recent',
})

export const getOwnRecord = endpoint({
  operationId: 'getOwnRecord',
  summary: 'Whoever is signed in, as the shop keeps them.',
  method: 'GET',
  path: '/api/own-record',
  access: { who: 'desk', awaiting: awaited },
  replies: { 200: Person },
  problems: [],
})

/** `present`: what a person proves with that it is them; `null` where an owner renews somebody else's. */
const present = z.nullable(z.string().check(z.minLength(1), z.maxLength(200)))
const params = z.strictObject({ id: Id })

export const setPin = endpoint({
  operationId: 'setPin',
  summary:
    'Set a PIN: one’s own with the present PIN (the password where there is none), or as an owner, with a recent proof, somebody else’s. Ends their other sessions.',
  method: 'PUT',
  path: '/api/people/:id/pin',
  access: { who: 'desk' },
  ifMatch: true,
  params,
  body: z.strictObject({ pin: z.string().check(z.maxLength(20)), present }),
  triesPerMinute: 30,
  replies: { 200: Person },
  problems: [
    'RECORD_NOT_FOUND',
    'PIN_UNSUITABLE',
    'PIN_REFUSED',
    'PASSWORD_REFUSED',
    'SIGN_IN_BLOCKED',
    'PROOF_NEEDED',
  ],
})

export const setPassword = endpoint({
  operationId: 'setPassword',
  summary:
    'Set a password: one’s own with the present one (the PIN where there is none), or as an owner, with a recent proof, somebody else’s, who chooses their own at the next sign-in, within seven days. Ends their other sessions.',
  method: 'PUT',
  path: '/api/people/:id/password',
  access: { who: 'desk', awaiting: ['password'] },
  ifMatch: true,
  params,
  body: z.strictObject({ password: z.string().check(z.maxLength(200)), present }),
  triesPerMinute: 30,
  replies: { 200: Person },
  problems: [
    'RECORD_NOT_FOUND',
    'PASSWORD_UNSUITABLE',
    'PIN_REFUSED',
    'PASSWORD_REFUSED',
    'SIGN_IN_BLOCKED',
    'PROOF_NEEDED',
  ],
})
