import { withClient } from '../with-client.ts'

/** One line a thing: `check entries__seq_counts on entries: CHECK ((seq >= 1))`. */
export type Catalog = readonly string[]

const OURS = `relnamespace = 'public'::regnamespace and relname <> '_prisma_migrations'`

/** NOT NULL is in pg_constraint from PostgreSQL 18 on only, and Prisma's own diff covers it anyway. */
const WHAT_PRISMA_DOES_NOT_SEE = `
  select 'constraint ' || conname || ' on ' || relname || ': ' || pg_get_constraintdef(pg_constraint.oid)
         || case when convalidated then '' else ' (never checked)' end as line
    from pg_constraint join pg_class on pg_class.oid = conrelid where contype <> 'n' and ${OURS}
  union all
  select 'trigger ' || tgname || ' on ' || relname || ': ' || pg_get_triggerdef(pg_trigger.oid)
         || case tgenabled when 'O' then '' else ' (switched off)' end
    from pg_trigger join pg_class on pg_class.oid = tgrelid where not tgisinternal and ${OURS}
  union all
  select 'index ' || indexname || ' on ' || tablename || ': ' || indexdef
    from pg_indexes where schemaname = 'public' and tablename <> '_prisma_migrations'
  union all
  select 'function ' || proname || ': ' || pg_get_functiondef(pg_proc.oid)
    from pg_proc join pg_language on pg_language.oid = prolang
    where pronamespace = 'public'::regnamespace and lanname in ('plpgsql', 'sql')
  order by line`

/** Constraints, triggers, indexes and functions of a database, in one order. */
export function readCatalog(url: string): Promise<Catalog> {
  return withClient(url, async (client) => {
    const { rows } = await client.query<{ line: string }>(WHAT_PRISMA_DOES_NOT_SEE)
    return rows.map(({ line }) => line)
  })
}

/** What one has and the other has not, with `missing: ` or `foreign: ` before it; empty when they are alike. */
export function compareCatalogs(expected: Catalog, found: Catalog): string[] {
  const missing = expected.filter((line) => !found.includes(line)).map((line) => `missing: ${line}`)
  const foreign = found.filter((line) => !expected.includes(line)).map((line) => `foreign: ${line}`)
  return [...missing, ...foreign]
}
