import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'

/**
 * Server-sent events. A `wake` says that something was written, never what: the client reads the floor list
 * again, and what follows the last entry that it knows of the order it shows. `id` counts up within one process.
 */
export const live = endpoint({
  operationId: 'live',
  summary: 'Events: something was written.',
  method: 'GET',
  path: '/api/live',
  access: { who: 'device' },
  replies: { 200: { contentType: 'text/event-stream' } },
  problems: [],
})

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

export const openApi = endpoint({
  operationId: 'openApi',
  summary: 'This document.',
  method: 'GET',
  path: '/api/openapi.json',
  access: { who: 'public' },
  replies: { 200: z.record(z.string(), z.unknown()) },
  problems: [],
})
