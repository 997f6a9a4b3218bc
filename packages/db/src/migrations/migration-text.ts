import { migrate } from './migrate.ts'
import type { Migration } from './migration-files.ts'
import { diffFromDatabase, diffFromNothing, withSchemaEngine } from './schema-engine.ts'

/** The line in the first migration between what the schema generates and what is written by hand. */
export const HANDWRITTEN = '-- Written by hand'

/**
 * SQL that leads from the given migrations to the schema; empty when they already say the same.
 * @param url an empty database, in which the migrations are played first.
 */
export async function migrationFor({
  url,
  after,
}: {
  url: string
  after: readonly Migration[]
}): Promise<string> {
  if (after.length === 0) return withSchemaEngine(url, diffFromNothing)
  await migrate(url, { migrations: after })
  return withSchemaEngine(url, diffFromDatabase)
}
