import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '../embedded/start.ts'
import { driftOfDatabase, driftOfMigrations } from '../migrations/drift.ts'
import { migrate } from '../migrations/migrate.ts'
import { DATA_FOLDER } from '../migrations/places.ts'
import { withScratchDatabase } from '../migrations/scratch-database.ts'

/**
 * `npm run db:check`: the migrations say what the schema says; and the shop's database (DATABASE_URL, or the one in
 * ./data when there is one) is what its migrations make, to the last constraint, trigger and index.
 */
const differences = await withScratchDatabase(async (freshUrl) => {
  await migrate(freshUrl)
  const found = [await report('prisma/schema.prisma against the migrations', driftOfMigrations(freshUrl))]
  await withShopDatabase(async (url, name) => {
    found.push(await report(`${name} against a freshly migrated one`, driftOfDatabase(url, freshUrl)))
  })
  return found.reduce((sum, count) => sum + count, 0)
})
if (differences > 0) {
  console.error('Fix the schema and write the difference as a migration: npm run db:new -- <name>.')
  process.exitCode = 1
}

async function report(what: string, work: Promise<string[]>): Promise<number> {
  const lines = await work
  console.log(lines.length === 0 ? `No drift: ${what}.` : `Drift: ${what}:\n  ${lines.join('\n  ')}`)
  return lines.length
}

async function withShopDatabase(work: (url: string, name: string) => Promise<void>): Promise<void> {
  const given = process.env.DATABASE_URL
  if (given !== undefined) return work(given, 'the database of DATABASE_URL')
  if (!existsSync(join(DATA_FOLDER, 'postgres'))) return
  const server = await startEmbeddedPostgres({
    dataFolder: DATA_FOLDER,
    progress: (line) => console.error(line),
    whenInUse: 'join',
  })
  try {
    await work(server.ownerUrl, 'the database in ./data')
  } finally {
    await server.stop()
  }
}
