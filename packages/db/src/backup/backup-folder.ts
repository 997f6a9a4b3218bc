import { existsSync, readdirSync, statSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { BackupProblem } from './backup-problem.ts'

/** A backup as its file's name describes it; the machine that made it cannot look inside. */
export type FoundBackup = {
  readonly file: string
  /** What it holds was so at this instant. */
  readonly at: Date
  readonly bytes: number
  /** Where the log goes on after a backup of a cluster; `null` for one of tables. */
  readonly log: { readonly line: string; readonly firstSegment: string } | null
}

/** Stands in a name where no log is kept beside the backup. */
export const noLine = 'alone'

const pattern =
  /^bayledger-(\d{4}-\d\d-\d\dT\d\d)-(\d\d)-(\d\d)-(\d{3})Z-(?:tables|([a-z0-9]+)-([0-9A-F]{24}))\.age$/

/** The name of a backup: when, and where PostgreSQL's log begins that continues it. */
export function backupName(at: Date, log: FoundBackup['log']): string {
  const time = at.toISOString().replace(/[:.]/g, '-')
  return `bayledger-${time}-${log === null ? 'tables' : `${log.line}-${log.firstSegment}`}.age`
}

/** The backups of a folder, the newest first; other files are passed over. */
export function listBackups(folder: string): FoundBackup[] {
  if (!existsSync(folder)) return []
  return readdirSync(folder)
    .flatMap((name) => parseBackupName(folder, name) ?? [])
    .toSorted((one, other) => other.at.getTime() - one.at.getTime())
}

/** A backup by its own path, or the newest in a folder that is not after `until`. */
export function findBackup(path: string, until: Date | null): FoundBackup {
  if (!existsSync(path)) throw new BackupProblem(`There is no backup ${path}.`)
  if (!statSync(path).isDirectory())
    return { ...unnamed(path), ...parseBackupName(dirname(path), basename(path)) }
  const found = listBackups(path).find(({ at }) => until === null || at <= until)
  if (found) return found
  throw new BackupProblem(
    until === null
      ? `There is no backup in ${path}.`
      : `No backup in ${path} is from before that moment. The oldest moment that can be restored is that of the oldest backup.`,
  )
}

/** The folder of a line of the log, beside the backups that it continues. */
export const logFolder = (backups: string, line: string): string => join(backups, `log-${line}`)

function parseBackupName(folder: string, name: string): FoundBackup | undefined {
  const [, hour, minute, second, fraction, line, firstSegment] = pattern.exec(name) ?? []
  if (hour === undefined) return undefined
  const file = join(folder, name)
  return {
    file,
    at: new Date(`${hour}:${minute}:${second}.${fraction}Z`),
    bytes: statSync(file).size,
    log: line === undefined || firstSegment === undefined ? null : { line, firstSegment },
  }
}

/** A backup under another name is as good, only nobody knows what continues it. */
function unnamed(file: string): FoundBackup {
  const { mtime, size } = statSync(file)
  return { file, at: mtime, bytes: size, log: null }
}
