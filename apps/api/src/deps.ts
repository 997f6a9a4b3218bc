import type { PrismaClient } from '@bayledger/db/generated/client'
import type { Pool } from 'pg'
import type { LiveHub } from './http/live.ts'

/** The only source of the present moment; tests pass their own. */
export type Clock = { readonly now: () => Date }

export type SigningIdentity = { readonly certificatePem: string; readonly privateKeyPem: string }

/** What the parts of the service are made of; put together in `main.ts` or by a test. */
export type Deps = {
  readonly prisma: PrismaClient
  readonly pool: Pool
  readonly clock: Clock
  readonly shopId: string
  readonly tls: boolean
  /** Printed in links and reports; without a slash at the end. */
  readonly publicAddress: string
  readonly signing: SigningIdentity
  readonly live: LiveHub
}
