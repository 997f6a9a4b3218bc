import { randomBytes } from 'node:crypto'
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { withClient } from '@bayledger/db/with-client'
import { inject } from 'vitest'
import type { DatabaseServer } from './database-server.ts'

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

/** What a database of a test begins with, made once per run and copied for each test. */
export type Template = {
  /** Lower-case letters; the same name is the same content. */
  readonly name: string
  /** What filling begins with. */
  readonly beginsWith: 'migrated' | 'empty'
  /** Writes the content. `folder` is for what belongs to it and is no database. All connections are closed after. */
  readonly fill: (database: TestDatabase, folder: string) => Promise<void>
}

/**
 * A fresh database with all migrations applied and no rows, for one test file:
 * `const database = await createTestDatabase()` in `beforeAll`, `await database.drop()` in `afterAll`.
 * `empty` gives one without even the migrations, a template one with its content.
 */
export async function createTestDatabase(
  content: 'migrated' | 'empty' | Template = 'migrated',
): Promise<TestDatabase> {
  const server = inject('databaseServer')
  const name = `bayledger_test_${process.pid}_${randomBytes(6).toString('hex')}`
  return createDatabase(server, name, await sourceOf(server, content))
}

/** Where the files of a template are kept. */
export const templateFolder = (template: Template): string =>
  join(inject('databaseServer').folder, template.name)

/** The database to copy; `null` for an empty one. */
async function sourceOf(
  server: DatabaseServer,
  content: 'migrated' | 'empty' | Template,
): Promise<string | null> {
  if (content === 'empty') return null
  if (content === 'migrated') return server.template
  const name = `${server.template}_${content.name}`
  // Several workers may need it at once: the first one fills it, and it takes its name when it is whole.
  await withClient(server.url, async (client) => {
    await client.query('select pg_advisory_lock(hashtext($1))', [name])
    const { rowCount } = await client.query('select from pg_database where datname = $1', [name])
    if (rowCount !== 0) return
    const folder = templateFolder(content)
    mkdirSync(folder)
    const filling = await createDatabase(
      server,
      `${name}_filling`,
      await sourceOf(server, content.beginsWith),
    )
    try {
      await content.fill(filling, folder)
      await client.query(`alter database ${name}_filling rename to ${name}`)
    } catch (error) {
      rmSync(folder, { recursive: true, force: true })
      await filling.drop()
      throw error
    }
  })
  return name
}

async function createDatabase(
  server: DatabaseServer,
  name: string,
  source: string | null,
): Promise<TestDatabase> {
  await onServer(
    server.url,
    `create database ${name}${source === null ? '' : ` template ${source} strategy file_copy`}`,
  )
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
