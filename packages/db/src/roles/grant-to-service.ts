import type { Client } from 'pg'
import { MigrationProblem } from '../migrations/migration-problem.ts'
import { serviceMay } from './service-may.ts'

/**
 * Gives the service's role what `serviceMay` says and takes everything else away, in one transaction. `client` is the
 * owner's. Throws a MigrationProblem where a table has no line there or the role does not exist.
 */
export async function grantToService(client: Client, role: string): Promise<void> {
  const { rows } = await client.query<{ name: string }>(
    `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind in ('r', 'p', 'v')
     order by 1`,
  )
  const undecided = rows.filter(({ name }) => !Object.hasOwn(serviceMay, name)).map(({ name }) => name)
  if (undecided.length > 0)
    throw new MigrationProblem(
      `Nobody has decided what the service may do with the table ${undecided.join(', ')}. Add it to packages/db/src/roles/service-may.ts.`,
    )
  const to = client.escapeIdentifier(role)
  const statements = [
    `grant usage on schema public to ${to}`,
    ...rows.flatMap(({ name }) => {
      const table = client.escapeIdentifier(name)
      return [
        `revoke all on table ${table} from ${to}`,
        `grant ${serviceMay[name]?.join(', ')} on table ${table} to ${to}`,
      ]
    }),
  ]
  try {
    await client.query('begin')
    await client.query(statements.join(';\n'))
    await client.query('commit')
  } catch (error) {
    await client.query('rollback')
    throw new MigrationProblem(
      `The role ${role} could not be given its rights: ${error instanceof Error ? error.message : error}. Make the role first, and let the owner of the tables grant to it: docs/operations.md.`,
    )
  }
}
