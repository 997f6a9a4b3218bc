import { randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { migrate } from '@bayledger/db/migrations/migrate'
import { withClient } from '@bayledger/db/with-client'
import type { TestProject } from 'vitest/node'

/** An address whose user may make databases, and the migrated database that test files clone. */
type DatabaseServer = { readonly url: string; readonly template: string }

declare module 'vitest' {
  interface ProvidedContext {
    databaseServer: DatabaseServer
  }
}

type Shared = { users: number; readonly server: Promise<DatabaseServer & { stop: () => Promise<void> }> }

/** Vitest loads this file anew for every project; the one server of a run is remembered outside of it. */
const run = globalThis as { databaseServerOfTestRun?: Shared }

/**
 * Runs once per project that needs a database, and gives all of them one real PostgreSQL with a template in it that
 * has all migrations. TEST_DATABASE_URL names another server, whose user may make databases. The server made here
 * does not flush to disk: its data live as long as the run.
 */
export default async function provideDatabaseServer(project: TestProject): Promise<() => Promise<void>> {
  run.databaseServerOfTestRun ??= { users: 0, server: startServer() }
  const shared = run.databaseServerOfTestRun
  shared.users += 1
  const { url, template, stop } = await shared.server
  project.provide('databaseServer', { url, template })
  return async () => {
    shared.users -= 1
    if (shared.users > 0) return
    delete run.databaseServerOfTestRun
    await stop()
  }
}

async function startServer(): Promise<DatabaseServer & { stop: () => Promise<void> }> {
  const given = process.env.TEST_DATABASE_URL
  const server = given === undefined ? await startThrowaway() : { url: given, stop: async () => undefined }
  const template = `bayledger_template_${process.pid}_${randomBytes(3).toString('hex')}`
  await onServer(server.url, `create database ${template}`)
  const templateUrl = new URL(server.url)
  templateUrl.pathname = `/${template}`
  await migrate(templateUrl.href)
  return {
    url: server.url,
    template,
    stop: async () => {
      await onServer(server.url, `drop database if exists ${template} with (force)`)
      await server.stop()
    },
  }
}

async function startThrowaway(): Promise<{ url: string; stop: () => Promise<void> }> {
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

function onServer(url: string, statement: string): Promise<unknown> {
  return withClient(url, (client) => client.query(statement))
}
