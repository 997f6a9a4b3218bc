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
