import { randomBytes } from 'node:crypto'
import { withClient } from '@bayledger/db/with-client'
import { inject } from 'vitest'

export type TestDatabase = {
  readonly url: string
  /** Drops the database, whoever is still connected. */
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
  const url = new URL(server.url)
  url.pathname = `/${name}`
  return {
    url: url.href,
    drop: () => dropDatabase(server.url, name),
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
