import { withClient } from '../with-client.ts'
import { type Cluster, superuserOf } from './cluster.ts'

/**
 * Makes the shop's database and the user that owns it, unless they are there. That user is no superuser, so that
 * a fault in Bayledger cannot reach the server's settings or files. Also looks whether pages carry checksums.
 */
export async function prepareDatabase(cluster: Cluster, port: number): Promise<void> {
  await withClient(superuserOf(cluster, port), async (client) => {
    const { rows } = await client.query<{ checksums: string; role: boolean; database: boolean }>(`
      select current_setting('data_checksums') as checksums,
             exists (select from pg_roles where rolname = 'bayledger') as role,
             exists (select from pg_database where datname = 'bayledger') as database`)
    const found = rows[0]
    if (found?.checksums !== 'on') {
      cluster.progress('Data checksums are off in this folder: a failing disk would go unnoticed.')
    }
    if (found?.role !== true) {
      const password = client.escapeLiteral(cluster.secrets.application)
      await client.query(`create role bayledger login createdb password ${password}`)
    }
    if (found?.database !== true) await client.query('create database bayledger owner bayledger')
  })
}
