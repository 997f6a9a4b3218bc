import type { ClientConfig } from 'pg'
import type { Binaries } from './binaries.ts'
import type { Identity } from './identity.ts'
import type { Secrets } from './secrets.ts'

export type Progress = (line: string) => void

/** One PostgreSQL data folder and all that is needed to run it. */
export type Cluster = {
  readonly folder: string
  readonly log: string
  readonly binaries: Binaries
  readonly identity: Identity
  readonly secrets: Secrets
  readonly settings: Readonly<Record<string, string>>
  readonly progress: Progress
}

/** How to reach a cluster's server as its superuser. */
export function superuserOf(cluster: Cluster, port: number): ClientConfig {
  const password = cluster.secrets.superuser
  return {
    host: '127.0.0.1',
    port,
    user: 'postgres',
    password,
    database: 'postgres',
    connectionTimeoutMillis: 5000,
  }
}
