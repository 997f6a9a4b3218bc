import type { Pool } from 'pg'
import { forgeable } from './service-may.ts'

/** What a role could do to the record, in words; `role` is who is connected. */
export type RoleVerdict = { readonly role: string; readonly could: readonly string[] }

/**
 * Looks whether whoever is connected could change or remove what was written: by a right on a table, by owning it (an
 * owner grants itself anything and drops triggers), by owning the schema or the database (they can be dropped), by being
 * a superuser, or by making itself a member of the owner. Empty `could`: it is fit to serve.
 */
export async function judgeServiceRole(pool: Pool): Promise<RoleVerdict> {
  const { rows } = await pool.query<{ role: string; line: string | null }>(judgement, [[...forgeable]])
  return { role: rows[0]?.role ?? '', could: rows.flatMap(({ line }) => (line === null ? [] : [line])) }
}

const judgement = `
  with me as (select * from pg_roles where rolname = current_user),
  faults as (
    select 1 as place, 'it is a superuser' as line from me where rolsuper
    union all
    select 2, 'it may make roles, and so join the owner''s' from me where rolcreaterole and not rolsuper
    union all
    select 3, 'it owns the database' from pg_database
      where datname = current_database() and pg_has_role(current_user, datdba, 'MEMBER')
    union all
    select 4, 'it owns the schema public' from pg_namespace
      where nspname = 'public' and pg_has_role(current_user, nspowner, 'MEMBER')
    union all
    select 5, 'it may switch triggers off (session_replication_role)' from me
      where not rolsuper and has_parameter_privilege(current_user, 'session_replication_role', 'SET')
    union all
    select 6, 'it owns the table ' || relname from pg_class
      where relnamespace = 'public'::regnamespace and relname = any ($1::text[])
        and pg_has_role(current_user, relowner, 'MEMBER')
    union all
    select 7, 'it may ' || string_agg(lower(what), ', ' order by what) || ' ' || relname
      from pg_class cross join unnest(array['UPDATE', 'DELETE', 'TRUNCATE', 'TRIGGER']) as what
      where relnamespace = 'public'::regnamespace and relname = any ($1::text[])
        and (has_table_privilege(current_user, pg_class.oid, what)
          or (what = 'UPDATE' and has_any_column_privilege(current_user, pg_class.oid, what)))
      group by relname
  )
  select current_user as role, line from (select 0) as once left join faults on true order by place, line`
