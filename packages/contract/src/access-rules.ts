import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { RecordVersion, Sure } from './record.ts'

/** `secondStep`: everybody at the desk signs in with a code besides the password, or with a passkey. */
export const AccessRulesContent = z.strictObject({ secondStep: z.boolean() })
export type AccessRulesContent = z.infer<typeof AccessRulesContent>

const AccessRules = z.strictObject({
  id: z.literal('access-rules'),
  version: z.int(),
  content: AccessRulesContent,
  facts: z.strictObject({}),
})

const path = '/api/register/access-rules'
const access = { who: 'desk', roles: ['owner'] } as const

export const getAccessRules = endpoint({
  operationId: 'getAccessRules',
  summary:
    'What the shop asks of everybody at the sign-in, with its history; version 0 is what holds until an owner says otherwise: nothing.',
  method: 'GET',
  path,
  access,
  replies: { 200: z.strictObject({ record: AccessRules, history: z.array(RecordVersion) }) },
  problems: [],
})

export const putAccessRules = endpoint({
  operationId: 'putAccessRules',
  summary: 'Say what the shop asks of everybody at the sign-in, from their next one on.',
  method: 'PUT',
  path,
  access: { ...access, proof: 'recent' },
  ifMatch: true,
  body: z.strictObject({ content: AccessRulesContent, sure: Sure }),
  replies: { 200: AccessRules },
  problems: [],
})
