import { withClient } from '../with-client.ts'
import { type Cluster, superuserOf } from './cluster.ts'

/** Owns the shop's database and migrates it. */
export const ownerRole = 'bayledger'
/** Serves: owns nothing, and may do what the migrations grant it. */
export const serviceRole = 'bayledger_service'

/**
 * Makes the shop's database, the user that owns it and the one that serves, unless they are there. Neither is a
 * superuser, so that a fault in Bayledger cannot reach the server's settings or files. Also looks whether pages carry
 * checksums.
 */
export async function prepareDatabase(cluster: Cluster, port: number): Promise<void> {
  await withClient(superuserOf(cluster, port), async (client) => {
    const { rows } = await client.query<{ checksums: string; roles: string[]; database: boolean }>(`
      select current_setting('data_checksums') as checksums,
             array (select rolname::text from pg_roles where rolname in ('${ownerRole}', '${serviceRole}')) as roles,
             exists (select from pg_database where datname = 'bayledger') as database`)
    const found = rows[0]
    if (found?.checksums !== 'on') {
      cluster.progress('Data checksums are off in this folder: a failing disk would go unnoticed.')
    }
    const { application, service } = cluster.secrets
    if (!found?.roles.includes(ownerRole))
      await client.query(
        `create role ${ownerRole} login createdb password ${client.escapeLiteral(application)}`,
      )
    if (!found?.roles.includes(serviceRole))
      await client.query(`create role ${serviceRole} login password ${client.escapeLiteral(service)}`)
    if (found?.database !== true) await client.query(`create database bayledger owner ${ownerRole}`)
  })
}
