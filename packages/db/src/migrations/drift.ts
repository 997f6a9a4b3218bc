import { compareCatalogs, readCatalog } from './catalog.ts'
import { diffFromDatabase, withSchemaEngine } from './schema-engine.ts'

/** What a freshly migrated database lacks to be what `prisma/schema.prisma` says, as SQL lines. */
export async function driftOfMigrations(freshUrl: string): Promise<string[]> {
  return linesOf(await withSchemaEngine(freshUrl, diffFromDatabase))
}

/**
 * How a database in use differs from a freshly migrated one: tables and columns by Prisma's engine, and what that
 * does not see (checks, triggers, partial indexes, functions) by the catalogs.
 */
export async function driftOfDatabase(url: string, freshUrl: string): Promise<string[]> {
  const tables = linesOf(await withSchemaEngine(url, diffFromDatabase))
  return [...tables, ...compareCatalogs(await readCatalog(freshUrl), await readCatalog(url))]
}

function linesOf(sql: string): string[] {
  return sql.split('\n').filter((line) => line.trim() !== '' && !line.startsWith('--'))
}
