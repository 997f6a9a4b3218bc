import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { findBackup } from '@bayledger/db/backup/backup-folder'
import { readIdentities } from '@bayledger/db/backup/backup-key'
import { BackupProblem } from '@bayledger/db/backup/backup-problem'
import { readAbout } from '@bayledger/db/backup/read-backup'
import { restoreBackup } from '@bayledger/db/backup/restore-backup'
import { readConfig } from '../config.ts'
import { faultLine } from '../proof/finding.ts'
import { countsLine, judgeRestored } from './restored/judge-restored.ts'
import { takeErasureNotes } from './restored/take-erasure-notes.ts'
import { untilIn } from './restored/until-option.ts'

/**
 * `npm run restore -- <backup or folder of backups> --identity <key file> --to <empty folder>`: restores the shop with all
 * that was kept after the backup, verifies it and says what it holds. `--until "2026-11-28 14:03"`: as it was then, by
 * the shop's clocks. With DATABASE_URL set, a backup of tables fills that empty database. Status 1: restored, and
 * something in it is broken; 2: not restored.
 */
const say = (line: string): void => console.log(line)
const usage = 'npm run restore -- <backup or folder> --identity <key file> --to <empty folder>'
const mostNamed = 20

const askedFor = () => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { identity: { type: 'string' }, to: { type: 'string' }, until: { type: 'string' } },
  })
  const { identity, to, until } = values
  const [path, ...others] = positionals
  if (path === undefined || identity === undefined || to === undefined || others.length > 0)
    throw new BackupProblem(`Say which backup, with which key, and where to:\n\n  ${usage}`)
  return { path, identity, to, until }
}

/** The zone of the shop whose newest backup it is: a day and a time are meant by its clocks. */
const momentOf = async (
  text: string | undefined,
  path: string,
  identities: readonly string[],
): Promise<Date | null> => {
  if (text === undefined) return null
  const { file } = findBackup(path, null)
  return untilIn(text, (await readAbout(file, identities)).timeZone)
}

try {
  const { path, identity, to, until } = askedFor()
  const config = readConfig()
  const identities = readIdentities(identity)
  const moment = await momentOf(until, path, identities)
  const backup = findBackup(path, moment)
  const { databaseUrl, databaseOwnerUrl } = config
  if (databaseUrl !== null && databaseOwnerUrl === null && config.databaseRoles === 'two')
    throw new BackupProblem('To fill the database of DATABASE_URL, set DATABASE_OWNER_URL too.')
  const judged = await restoreBackup(
    {
      backup,
      identities,
      to,
      until: moment ?? 'newest',
      outside:
        databaseUrl === null ? null : { serviceUrl: databaseUrl, ownerUrl: databaseOwnerUrl ?? databaseUrl },
      progress: say,
    },
    (shop) => judgeRestored(shop, (done, of) => done === of && say(`verified ${of} orders`)),
  )
  const { verification, laterDigests } = judged
  for (const fault of verification.faults.slice(0, mostNamed)) say(faultLine(fault))
  const notes = takeErasureNotes(config.digestFolder, join(to, 'digests'))
  if (notes > 0) say(`${notes} people were erased after this backup; the first start erases them again.`)
  if (laterDigests > 0) say(`${laterDigests} daily digests are from later and lie in ${to}/digests-later`)
  say(
    databaseUrl === null
      ? `The shop is restored in ${to}. Start it: DATA_FOLDER=${to} npm start`
      : `The shop is restored in the database of DATABASE_URL and in ${to}. Start it with both addresses as now: DATA_FOLDER=${to} npm start`,
  )
  say(countsLine(verification))
  process.exitCode = verification.faults.length === 0 ? 0 : 1
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error))
  process.exitCode = 2
}
