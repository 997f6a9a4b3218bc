import { randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { migrate } from '@bayledger/db/migrations/migrate'
import { Client } from 'pg'
import type { TestProject } from 'vitest/node'

declare module 'vitest' {
  interface ProvidedContext {
    /** An address whose user may make databases, and the migrated database that test files clone. */
    databaseServer: { readonly url: string; readonly template: string }
  }
}

/**
 * Runs once per test run: a real PostgreSQL, and in it a template with all migrations applied. TEST_DATABASE_URL
 * names another server, whose user may make databases. The server made here does not flush to disk: its data live
 * as long as the run.
 */
export default async function provideDatabaseServer(project: TestProject): Promise<() => Promise<void>> {
  const given = process.env.TEST_DATABASE_URL
  const server = given === undefined ? await startServer() : { url: given, stop: async () => undefined }
  const template = `bayledger_template_${process.pid}_${randomBytes(3).toString('hex')}`
  await onServer(server.url, `create database ${template}`)
  const templateUrl = new URL(server.url)
  templateUrl.pathname = `/${template}`
  await migrate(templateUrl.href)
  project.provide('databaseServer', { url: server.url, template })
  return async () => {
    await onServer(server.url, `drop database if exists ${template} with (force)`)
    await server.stop()
  }
}

async function startServer(): Promise<{ url: string; stop: () => Promise<void> }> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-tests-'))
  const server = await startEmbeddedPostgres({
    dataFolder,
    progress: (line) => console.error(line),
    settings: { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off', max_connections: '200' },
  })
  return {
    url: server.url,
    stop: async () => {
      await server.stop()
      rmSync(dataFolder, { recursive: true, force: true })
    },
  }
}

async function onServer(url: string, statement: string): Promise<void> {
  const client = new Client({ connectionString: url })
  await client.connect()
  await client.query(statement)
  await client.end()
}
