import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'

export const openApi = endpoint({
  operationId: 'openApi',
  summary: 'This document.',
  method: 'GET',
  path: '/api/openapi.json',
  access: { who: 'public' },
  replies: { 200: z.record(z.string(), z.unknown()) },
  problems: [],
})
