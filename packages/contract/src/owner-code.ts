import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant, line } from './identity.ts'

const own = { path: '/api/own-owner-code', access: { who: 'desk', roles: ['owner'] } } as const

export const getOwnerCode = endpoint({
  operationId: 'getOwnerCode',
  summary: 'When one’s own printed code was made; null where there is none, or it was used.',
  method: 'GET',
  ...own,
  replies: { 200: z.strictObject({ madeAt: z.nullable(Instant) }) },
  problems: [],
})

export const makeOwnerCode = endpoint({
  operationId: 'makeOwnerCode',
  summary:
    'Make the code on paper with which one sets another password without the old one: good once, shown only now. The one before ends.',
  method: 'POST',
  ...own,
  access: { ...own.access, proof: 'recent' },
  replies: { 201: z.strictObject({ code: z.string(), madeAt: Instant }) },
  problems: [],
})

export const enterByOwnerCode = endpoint({
  operationId: 'enterByOwnerCode',
  summary:
    'Set the password of an owner by their printed code. All their sessions end; their code at sign-in and their passkeys are removed. Wrong tries count with those at sign-in.',
  method: 'POST',
  path: '/api/sessions/desk/owner-code',
  access: { who: 'public' },
  body: z.strictObject({
    shopId: z.optional(Id),
    name: line(80),
    code: z.string().check(z.minLength(1), z.maxLength(80)),
    password: z.string().check(z.maxLength(200)),
  }),
  triesPerMinute: 20,
  replies: { 204: null },
  problems: ['OWNER_CODE_REFUSED', 'PASSWORD_UNSUITABLE', 'SIGN_IN_BLOCKED'],
})
