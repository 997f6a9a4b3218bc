import { resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { readRecipients } from '@bayledger/db/backup/backup-key'
import { makeBackup } from '@bayledger/db/backup/make-backup'
import { pruneBackups } from '@bayledger/db/backup/prune-backups'
import type { ShopDatabase } from '@bayledger/db/shop-database'
import { settingsToKeep } from '../config.ts'
import { onShop } from './on-shop.ts'

/**
 * `npm run backup`: makes an encrypted backup of database, keys, digests and settings while the service runs, then removes
 * those that the rule no longer keeps. `-- --to folder`: somewhere else than BACKUP_FOLDER; nothing is removed there.
 * `-- --tables`: rows instead of files, for another PostgreSQL; for an outside one it is always rows.
 */
const say = (line: string): void => console.log(line)

const sourceOf = (database: ShopDatabase, tables: boolean) =>
  database.superuserUrl === null || tables
    ? ({ kind: 'tables', url: database.ownerUrl ?? database.serviceUrl } as const)
    : ({ kind: 'cluster', superuserUrl: database.superuserUrl, database: 'bayledger' } as const)

await onShop(async ({ database, config }) => {
  const { values } = parseArgs({ options: { to: { type: 'string' }, tables: { type: 'boolean' } } })
  const begun = performance.now()
  const made = await makeBackup({
    folder: values.to === undefined ? config.backupFolder : resolve(values.to),
    recipients: await readRecipients(config.dataFolder),
    database: sourceOf(database, values.tables === true),
    files: {
      dataFolder: config.dataFolder,
      digestFolder: config.digestFolder,
      settings: settingsToKeep(),
    },
    progress: say,
  })
  const removed = values.to === undefined ? pruneBackups(config.backupFolder, config.backupKeep) : []
  for (const file of removed) say(`removed ${file}: newer ones are kept in its place`)
  const seconds = ((performance.now() - begun) / 1000).toFixed(1)
  const megabytes = (made.bytes / 1_000_000).toFixed(1)
  say(`${made.file}: ${megabytes} MB, ${made.counts.entries ?? 0} entries, ${seconds} s`)
})
