import { existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { readRecipients } from '@bayledger/db/backup/backup-key'
import { makeBackup } from '@bayledger/db/backup/make-backup'
import { pruneBackups } from '@bayledger/db/backup/prune-backups'
import { openShopDatabase, type ShopDatabase } from '@bayledger/db/shop-database'
import { readConfig, settingsToKeep } from '../config.ts'

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

try {
  const { values } = parseArgs({ options: { to: { type: 'string' }, tables: { type: 'boolean' } } })
  const config = readConfig()
  if (config.databaseUrl === null && !existsSync(join(config.dataFolder, 'postgres')))
    throw new Error(`There is no shop in ${config.dataFolder}. Set DATA_FOLDER or DATABASE_URL.`)
  const recipients = readRecipients(config.dataFolder)
  const begun = performance.now()
  const database = await openShopDatabase(config, say, 'join')
  const made = await makeBackup({
    folder: values.to === undefined ? config.backupFolder : resolve(values.to),
    recipients,
    database: sourceOf(database, values.tables === true),
    files: {
      signingFolder: join(config.dataFolder, 'signing'),
      digestFolder: config.digestFolder,
      settings: settingsToKeep(),
    },
    progress: say,
  }).finally(() => database.stop())
  const removed = values.to === undefined ? pruneBackups(config.backupFolder, config.backupKeep) : []
  for (const file of removed) say(`removed ${file}: newer ones are kept in its place`)
  const seconds = ((performance.now() - begun) / 1000).toFixed(1)
  const megabytes = (made.bytes / 1_000_000).toFixed(1)
  say(`${made.file}: ${megabytes} MB, ${made.counts.entries ?? 0} entries, ${seconds} s`)
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error))
  process.exitCode = 2
}
