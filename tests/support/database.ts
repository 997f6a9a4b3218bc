import { randomBytes } from 'node:crypto'
import { withClient } from '@bayledger/db/with-client'
import { inject } from 'vitest'

export type TestDatabase = {
  /** As the owner, who migrates. */
  readonly url: string
  /** As the role that the service runs as. */
  readonly serviceUrl: string
  /** As a superuser, who may do anything. */
  readonly adminUrl: string
  /** Drops the database, even if someone is still connected. */
  readonly drop: () => Promise<void>
}

/**
 * A fresh database with all migrations applied and no rows, for one test file:
 * `const database = await createTestDatabase()` in `beforeAll`, `await database.drop()` in `afterAll`.
 * `empty` gives one without even the migrations.
 */
export async function createTestDatabase(content: 'migrated' | 'empty' = 'migrated'): Promise<TestDatabase> {
  const server = inject('databaseServer')
  const name = `bayledger_test_${process.pid}_${randomBytes(6).toString('hex')}`
  const source = content === 'migrated' ? `template ${server.template} strategy file_copy` : ''
  await onServer(server.url, `create database ${name} ${source}`)
  const at = (address: string): string => {
    const url = new URL(address)
    url.pathname = `/${name}`
    return url.href
  }
  return {
    url: at(server.url),
    serviceUrl: at(server.serviceUrl),
    adminUrl: at(server.adminUrl),
    drop: () => dropDatabase(server.adminUrl, name),
  }
}

/** `force` may not end an autovacuum worker, which belongs to the superuser: it leaves by itself in a moment. */
async function dropDatabase(url: string, name: string): Promise<void> {
  for (let triesLeft = 50; ; triesLeft -= 1) {
    try {
      await onServer(url, `drop database if exists ${name} with (force)`)
      return
    } catch (error) {
      const mayNotEnd = error instanceof Error && 'code' in error && error.code === '42501'
      if (!mayNotEnd || triesLeft === 0) throw error
      await new Promise((resolve) => setTimeout(resolve, 100))
    }
  }
}

function onServer(url: string, statement: string): Promise<unknown> {
  return withClient(url, (client) => client.query(statement))
}
