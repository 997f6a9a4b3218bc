import * as z from 'zod/mini'
import { BackupState } from './backup-state.ts'
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
  summary:
    'The database answers too; orders that this process found altered are listed, and how backups are.',
  method: 'GET',
  path: '/readyz',
  access: { who: 'public' },
  replies: {
    200: z.strictObject({
      status: z.literal('ready'),
      /** Orders that nothing can be added to; the others go on. */
      readOnlyOrders: z.array(
        z.strictObject({
          orderNumber: z.string(),
          seq: z.int(),
          code: z.enum(['chain-broken', 'newer-than-this-program']),
        }),
      ),
      backups: BackupState,
    }),
  },
  problems: ['SERVICE_UNAVAILABLE'],
})
