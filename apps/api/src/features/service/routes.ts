import { contract as everyEndpoint } from '@bayledger/contract/contract'
import * as contract from '@bayledger/contract/service'
import { AppError } from '../../core/app-error.ts'
import type { Deps } from '../../deps.ts'
import { type Binding, bind, bindStream } from '../../http/binding.ts'
import { openApiDocument } from '../../http/open-api.ts'

export const serviceRoutes = (deps: Deps): Binding[] => [
  bindStream(contract.live, (reply) => deps.live.join(reply)),
  bind(contract.health)(async () => ({ status: 200, body: { status: 'alive' } })),
  bind(contract.readiness)(async () => {
    await deps.pool.query('select 1').catch((cause: unknown) => {
      throw new AppError('SERVICE_UNAVAILABLE', 'The database does not answer. Try again in a moment.', {
        retryAfterSeconds: 5,
        cause,
      })
    })
    return { status: 200, body: { status: 'ready' } }
  }),
  bind(contract.openApi)(async () => ({
    status: 200,
    body: openApiDocument(everyEndpoint, deps.publicAddress),
  })),
]
