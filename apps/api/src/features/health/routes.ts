import * as contract from '@bayledger/contract/health'
import { AppError } from '../../core/app-error.ts'
import { databaseTrouble } from '../../core/database-trouble.ts'
import type { Parts } from '../../deps.ts'
import { type Binding, bind } from '../../http/binding.ts'
import { listReadOnlyOrders } from '../entries/service/read-only-orders.ts'
import { pingDatabase } from './store.ts'

export const healthRoutes = (parts: Parts): Binding[] => [
  bind(contract.health)(async () => ({ status: 200, body: { status: 'alive' } })),
  bind(contract.readiness)(async () => {
    await pingDatabase(parts.pool).catch((cause: unknown) => {
      const trouble = cause instanceof Error ? databaseTrouble(cause) : null
      throw new AppError({ code: 'SERVICE_UNAVAILABLE', ...trouble }, { retryAfterSeconds: 5, cause })
    })
    if ((await parts.signing.signingTroubles()).length > 0)
      throw new AppError({ code: 'SERVICE_UNAVAILABLE', why: 'signing-key' })
    const readOnlyOrders = listReadOnlyOrders(parts.pool)
    return { status: 200, body: { status: 'ready', readOnlyOrders, backups: parts.backups() } }
  }),
]
