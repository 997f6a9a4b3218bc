import { execFileSync } from 'node:child_process'
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { withClient } from '@bayledger/db/with-client'
import { expect, it, onTestFinished } from 'vitest'
import { makeQuickFolder } from '../support/quick-folder.ts'

/**
 * What docs/backups.md says of a PostgreSQL of one's own, done by its own settings and no code of ours.
 * Source: PostgreSQL manual, 25.3 Continuous Archiving and Point-in-Time Recovery.
 */
it('an outside PostgreSQL that archives its log goes back to a moment by the steps of the guide', async () => {
  const place = makeQuickFolder('bayledger-outside-')
  onTestFinished(() => rmSync(place, { recursive: true, force: true }))
  const at = (...path: string[]) => join(place, ...path)
  mkdirSync(at('archive'))
  const server = await startEmbeddedPostgres({
    dataFolder: at('server'),
    progress: () => undefined,
    settings: {
      archive_mode: 'on',
      archive_timeout: '60',
      archive_command: `test ! -f "${at('archive')}/%f" && cp "%p" "${at('archive')}/%f"`,
    },
  })
  const { before } = await withClient(server.superuserUrl, async (client) => {
    const write = async (word: string): Promise<string> => {
      await client.query('insert into said values ($1)', [word])
      const { rows } = await client.query<{ at: string }>('select clock_timestamp()::text as at')
      return rows[0]?.at ?? ''
    }
    await client.query('create table said (word text)')
    await client.query(`select pg_backup_start('the night', fast => true)`)
    execFileSync('cp', ['-a', at('server/postgres'), at('base')])
    const { rows } = await client.query<{ label: string }>('select labelfile as label from pg_backup_stop()')
    writeFileSync(at('base/backup_label'), rows[0]?.label ?? '')
    const moment = await write('before')
    await write('after')
    const last = await client.query<{ file: string }>('select pg_walfile_name(pg_switch_wal()) as file')
    const archived = async () => {
      const { rows: found } = await client.query<{ file: string }>(
        'select last_archived_wal as file from pg_stat_archiver',
      )
      return (found[0]?.file ?? '') >= (last.rows[0]?.file ?? '')
    }
    await expect.poll(archived).toBe(true)
    return { before: moment }
  })
  await server.stop()

  mkdirSync(at('again'), { mode: 0o700 })
  execFileSync('cp', ['-a', at('base'), at('again/postgres')])
  rmSync(at('again/postgres/postmaster.pid'))
  rmSync(at('again/postgres/pg_wal'), { recursive: true })
  mkdirSync(at('again/postgres/pg_wal'), { mode: 0o700 })
  writeFileSync(at('again/postgres/recovery.signal'), '')
  const again = await startEmbeddedPostgres({
    dataFolder: at('again'),
    progress: () => undefined,
    settings: {
      restore_command: `cp "${at('archive')}/%f" "%p"`,
      recovery_target_time: before,
      recovery_target_action: 'promote',
    },
  })
  const { rows } = await withClient(again.superuserUrl, (client) => client.query('select word from said'))
  await again.stop()
  expect(rows).toEqual([{ word: 'before' }])
})
