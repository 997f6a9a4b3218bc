import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { MIGRATIONS_FOLDER } from './places.ts'

/** One migration of the folder; `checksum` is SHA-256 of its SQL in hex, as Prisma computes it. */
export type Migration = { readonly name: string; readonly sql: string; readonly checksum: string }

/** All migrations of a folder in Prisma's layout, `<time>_<name>/migration.sql`, in the order they apply. */
export function readMigrations(folder: string = MIGRATIONS_FOLDER): Migration[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(folder, entry.name, 'migration.sql')))
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const sql = readFileSync(join(folder, name, 'migration.sql'), 'utf8')
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') }
    })
}
