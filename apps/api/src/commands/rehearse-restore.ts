import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { findBackup } from '@bayledger/db/backup/backup-folder'
import { readIdentities } from '@bayledger/db/backup/backup-key'
import { BackupProblem } from '@bayledger/db/backup/backup-problem'
import { restoreBackup } from '@bayledger/db/backup/restore-backup'
import { readConfig } from '../config.ts'
import { faultLine } from '../proof/finding.ts'
import { countsLine, judgeRestored } from './restored/judge-restored.ts'

/**
 * `npm run restore:rehearse -- --identity <key file>`: restores the newest backup of BACKUP_FOLDER (`--from`: of another
 * folder, or one file) in a temporary place, verifies every chain, holds the rows against the backup's own list, and
 * removes it again. Status 0: it would do; 1: it opens and something in it is wrong; 2: it does not open.
 */
const say = (line: string): void => console.log(line)
const mostNamed = 20

const place = mkdtempSync(join(tmpdir(), 'bayledger-rehearsal-'))
try {
  const { values } = parseArgs({ options: { identity: { type: 'string' }, from: { type: 'string' } } })
  if (values.identity === undefined)
    throw new BackupProblem('Say with which key: npm run restore:rehearse -- --identity <key file>')
  const backup = findBackup(
    values.from === undefined ? readConfig().backupFolder : resolve(values.from),
    null,
  )
  say(`rehearsing with ${backup.file}, made ${backup.at.toISOString()}`)
  const { verification, differences } = await restoreBackup(
    {
      backup,
      identities: readIdentities(values.identity),
      to: join(place, 'shop'),
      until: 'backup',
      outside: null,
      progress: say,
    },
    (shop) => judgeRestored(shop, () => undefined),
  )
  const faults = [...verification.faults.map(faultLine), ...differences]
  for (const fault of faults.slice(0, mostNamed)) say(fault)
  say(`${countsLine(verification)}, counts that differ ${differences.length}`)
  process.exitCode = faults.length === 0 ? 0 : 1
} catch (error) {
  console.error(error instanceof Error ? error.message : String(error))
  process.exitCode = 2
} finally {
  rmSync(place, { recursive: true, force: true })
}
