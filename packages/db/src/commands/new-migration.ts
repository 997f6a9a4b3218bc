import { mkdirSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { readMigrations } from '../migrations/migration-files.ts'
import { HANDWRITTEN, migrationFor } from '../migrations/migration-text.ts'
import { MIGRATIONS_FOLDER } from '../migrations/places.ts'
import { withScratchDatabase } from '../migrations/scratch-database.ts'

/**
 * `npm run db:new -- <name>` writes the next migration: what the schema says beyond the migrations there are.
 * `--rewrite-first` instead writes the first migration's generated part again and keeps its handwritten part; only
 * until the first release, because a database that already has it will then refuse to start.
 */
const [argument] = process.argv.slice(2)

if (argument === '--rewrite-first') await rewriteFirst()
else if (argument !== undefined && /^[a-z0-9]+(?:[-_][a-z0-9]+)*$/.test(argument)) await writeNext(argument)
else {
  console.error('Give the migration a name of small letters, digits and _: npm run db:new -- add_wheel_notes')
  process.exitCode = 1
}

async function writeNext(name: string): Promise<void> {
  const sql = await withScratchDatabase(async (url) => migrationFor({ url, after: readMigrations() }))
  if (sql === '') {
    console.log('Nothing to write: the migrations already say what the schema says.')
    return
  }
  const time = new Date().toISOString().replace(/\D/g, '').slice(0, 14)
  const folder = join(MIGRATIONS_FOLDER, `${time}_${name.replaceAll('-', '_')}`)
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'migration.sql'), sql)
  console.log(
    `Wrote ${relative(process.cwd(), folder)}/migration.sql. Add checks and triggers by hand, then run npm run db:check.`,
  )
}

async function rewriteFirst(): Promise<void> {
  const migrations = readMigrations()
  const [first] = migrations
  if (first === undefined || migrations.length > 1) {
    console.error(
      'Only a first migration that is the only one can be written again. Use npm run db:new -- <name>.',
    )
    process.exitCode = 1
    return
  }
  const marker = first.sql.indexOf(HANDWRITTEN)
  if (marker < 0) throw new Error(`${first.name} has lost the line "${HANDWRITTEN}".`)
  const generated = await withScratchDatabase(async (url) => migrationFor({ url, after: [] }))
  const file = join(MIGRATIONS_FOLDER, first.name, 'migration.sql')
  writeFileSync(file, `${generated.trimEnd()}\n\n${first.sql.slice(marker)}`)
  console.log(`Wrote ${relative(process.cwd(), file)} again above "${HANDWRITTEN}".`)
}
