import { randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { migrate } from '@bayledger/db/migrations/migrate'
import { withClient } from '@bayledger/db/with-client'
import type { TestProject } from 'vitest/node'

/** An address whose user may make databases, one of the role that serves, and the migrated database that tests copy. */
export type DatabaseServer = {
  readonly url: string
  readonly serviceUrl: string
  /** Who may end other roles' connections and do anything. */
  readonly adminUrl: string
  /** Its name also begins the names of the other templates of this run. */
  readonly template: string
  /** A folder for what belongs to a template and is no database; removed with the server. */
  readonly folder: string
}

declare module 'vitest' {
  interface ProvidedContext {
    databaseServer: DatabaseServer
  }
}

type Shared = { users: number; readonly server: Promise<DatabaseServer & { stop: () => Promise<void> }> }

/** Vitest loads this file again for every project; the one server of a run is kept outside of it. */
const run = globalThis as { databaseServerOfTestRun?: Shared }

/**
 * Runs once per project that needs a database, and gives all of them one real PostgreSQL with a template in it that
 * has all migrations. TEST_DATABASE_URL names another server, whose user is a superuser. The server made here
 * does not flush to disk, and keeps no statistics of rows: its data live as long as the run, and its databases for seconds.
 */
export default async function provideDatabaseServer(project: TestProject): Promise<() => Promise<void>> {
  run.databaseServerOfTestRun ??= { users: 0, server: startServer() }
  const shared = run.databaseServerOfTestRun
  shared.users += 1
  const { stop, ...provided } = await shared.server
  project.provide('databaseServer', provided)
  return async () => {
    shared.users -= 1
    if (shared.users > 0) return
    delete run.databaseServerOfTestRun
    await stop()
  }
}

async function startServer(): Promise<DatabaseServer & { stop: () => Promise<void> }> {
  const given = process.env.TEST_DATABASE_URL
  const server = given === undefined ? await startThrowaway() : await useGiven(given)
  const template = `bayledger_template_${process.pid}_${randomBytes(3).toString('hex')}`
  const folder = mkdtempSync(join(tmpdir(), 'bayledger-templates-'))
  await onServer(server.url, `create database ${template}`)
  const templateUrl = new URL(server.url)
  templateUrl.pathname = `/${template}`
  await migrate(templateUrl.href, { serviceRole: new URL(server.serviceUrl).username })
  return {
    url: server.url,
    serviceUrl: server.serviceUrl,
    adminUrl: server.adminUrl,
    template,
    folder,
    stop: async () => {
      await dropTemplates(server.adminUrl, template)
      await server.stop()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}

/** Drops the template of this run and those that tests made from it. */
const dropTemplates = (url: string, template: string): Promise<void> =>
  withClient(url, async (client) => {
    const { rows } = await client.query<{ name: string }>(
      'select datname as name from pg_database where starts_with(datname, $1)',
      [template],
    )
    for (const { name } of rows) await client.query(`drop database if exists ${name} with (force)`)
  })

type Server = Omit<DatabaseServer, 'template' | 'folder'> & { readonly stop: () => Promise<void> }

/** A role that serves is made on the server that was given, for this run. */
async function useGiven(url: string): Promise<Server> {
  const role = `bayledger_service_${process.pid}`
  await onServer(url, `create role ${role} login password '${role}'`)
  const serviceUrl = new URL(url)
  serviceUrl.username = role
  serviceUrl.password = role
  return {
    url,
    serviceUrl: serviceUrl.href,
    adminUrl: url,
    stop: async () => void (await onServer(url, `drop role ${role}`)),
  }
}

async function startThrowaway(): Promise<Server> {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-tests-'))
  const server = await startEmbeddedPostgres({
    dataFolder,
    progress: (line) => console.error(line),
    settings: {
      fsync: 'off',
      synchronous_commit: 'off',
      full_page_writes: 'off',
      autovacuum: 'off',
      max_connections: '200',
    },
  })
  return {
    url: server.ownerUrl,
    serviceUrl: server.serviceUrl,
    adminUrl: server.superuserUrl,
    stop: async () => {
      await server.stop()
      rmSync(dataFolder, { recursive: true, force: true })
    },
  }
}

function onServer(url: string, statement: string): Promise<unknown> {
  return withClient(url, (client) => client.query(statement))
}
