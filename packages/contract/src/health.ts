import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'

export const health = endpoint({
  operationId: 'health',
  summary: 'The process answers.',
  method: 'GET',
  path: '/healthz',
  access: { who: 'public' },
  replies: { 200: z.strictObject({ status: z.literal('alive') }) },
  problems: [],
})

export const readiness = endpoint({
  operationId: 'readiness',
  summary: 'The database answers too.',
  method: 'GET',
  path: '/readyz',
  access: { who: 'public' },
  replies: { 200: z.strictObject({ status: z.literal('ready') }) },
  problems: ['SERVICE_UNAVAILABLE'],
})
