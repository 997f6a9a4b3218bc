import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id } from './identity.ts'

const params = z.strictObject({ id: Id })

export const getSecondStep = endpoint({
  operationId: 'getSecondStep',
  summary:
    'Whether a person types a code of an authenticator app at each sign-in, and how many recovery codes are left; one’s own, or as an owner anybody’s.',
  method: 'GET',
  path: '/api/people/:id/second-step',
  access: { who: 'desk', awaiting: ['second-step'] },
  params,
  replies: { 200: z.strictObject({ isOn: z.boolean(), recoveryCodesLeft: z.int() }) },
  problems: ['RECORD_NOT_FOUND'],
})

export const beginSecondStep = endpoint({
  operationId: 'beginSecondStep',
  summary:
    'Make one’s own secret for an authenticator app, shown only now. It counts once a code of it is confirmed; one from before ends.',
  method: 'POST',
  path: '/api/own-second-step',
  access: { who: 'desk', proof: 'recent', awaiting: ['second-step'] },
  /** `secret` in base 32, to be typed; `address` for a QR code. */
  replies: { 201: z.strictObject({ secret: z.string(), address: z.string() }) },
  problems: [],
})

export const confirmSecondStep = endpoint({
  operationId: 'confirmSecondStep',
  summary:
    'Confirm one’s own secret with a code that the app shows; gives ten recovery codes, shown only now.',
  method: 'POST',
  path: '/api/own-second-step/confirmation',
  access: { who: 'desk', proof: 'recent', awaiting: ['second-step'] },
  body: z.strictObject({ code: z.string().check(z.maxLength(20)) }),
  triesPerMinute: 20,
  replies: { 200: z.strictObject({ recoveryCodes: z.array(z.string()) }) },
  problems: ['SECOND_STEP_REFUSED'],
})

export const endSecondStep = endpoint({
  operationId: 'endSecondStep',
  summary:
    'Ask a person for no code any more: one’s own, or as an owner anybody’s, for whoever lost their telephone.',
  method: 'DELETE',
  path: '/api/people/:id/second-step',
  access: { who: 'desk', proof: 'recent' },
  params,
  replies: { 204: null },
  problems: ['RECORD_NOT_FOUND'],
})
