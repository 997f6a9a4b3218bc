import { readdirSync, rmSync } from 'node:fs'
import { basename, join } from 'node:path'
import { type FoundBackup, listBackups, logFolder } from './backup-folder.ts'
import { segmentPattern } from './log-position.ts'

/** How many days, weeks and months keep their newest backup, counted back from the newest. */
export type KeepRule = { readonly days: number; readonly weeks: number; readonly months: number }

/** What the rule makes of some backups. */
export type Judged = {
  readonly kept: readonly FoundBackup[]
  /** Those of them that are the newest of one of the last days. */
  readonly daily: readonly FoundBackup[]
  readonly over: readonly FoundBackup[]
}

/**
 * Splits backups, the newest first, by the rule: of each of the last days, weeks and months that have one, the newest is
 * kept; the newest of all is always kept. Backups of files and of tables are counted apart. Days, weeks (from Monday) and
 * months are those of UTC.
 */
export function judgeBackups(backups: readonly FoundBackup[], rule: KeepRule): Judged {
  const kinds = [backups.filter(({ log }) => log !== null), backups.filter(({ log }) => log === null)]
  const daily = new Set(kinds.flatMap((kind) => newestOfEach(kind, dayOf, Math.max(rule.days, 1))))
  const kept = new Set([
    ...daily,
    ...kinds.flatMap((kind) => newestOfEach(kind, weekOf, rule.weeks)),
    ...kinds.flatMap((kind) => newestOfEach(kind, monthOf, rule.months)),
  ])
  return {
    kept: backups.filter((backup) => kept.has(backup)),
    daily: backups.filter((backup) => daily.has(backup)),
    over: backups.filter((backup) => !kept.has(backup)),
  }
}

/**
 * Removes what the rule no longer keeps, and the log that continues no daily backup: an instant can be restored for as
 * many days as daily backups are kept. Gives the names of the backups that went.
 */
export function pruneBackups(folder: string, rule: KeepRule): string[] {
  const { over, daily } = judgeBackups(listBackups(folder), rule)
  for (const { file } of over) rmSync(file)
  pruneLogs(folder, daily)
  return over.map(({ file }) => basename(file))
}

function pruneLogs(folder: string, daily: readonly FoundBackup[]): void {
  const neededFrom = new Map<string, string>()
  for (const { log } of daily) {
    if (log === null) continue
    const known = neededFrom.get(log.line)
    if (known === undefined || log.firstSegment < known) neededFrom.set(log.line, log.firstSegment)
  }
  for (const line of linesIn(folder)) {
    const first = neededFrom.get(line)
    // The line of now always has a daily backup once one of files was made; another one has been left for good.
    if (first === undefined && neededFrom.size > 0) rmSync(logFolder(folder, line), { recursive: true })
    if (first === undefined) continue
    for (const name of readdirSync(logFolder(folder, line))) {
      const segment = name.slice(0, 24)
      if (segmentPattern.test(segment) && segment < first) rmSync(join(logFolder(folder, line), name))
    }
  }
}

const linesIn = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => /^log-([a-z0-9]+)$/.exec(name)?.[1] ?? [])

function newestOfEach(
  backups: readonly FoundBackup[],
  periodOf: (at: Date) => string,
  most: number,
): FoundBackup[] {
  const periods = new Map<string, FoundBackup>()
  for (const backup of backups) {
    const period = periodOf(backup.at)
    if (!periods.has(period)) periods.set(period, backup)
  }
  return [...periods.values()].slice(0, most)
}

const dayOf = (at: Date): string => at.toISOString().slice(0, 10)
const monthOf = (at: Date): string => at.toISOString().slice(0, 7)

/** The Monday with which the week begins. */
function weekOf(at: Date): string {
  const sinceMonday = (at.getUTCDay() + 6) % 7
  return dayOf(new Date(at.getTime() - sinceMonday * 86_400_000))
}
