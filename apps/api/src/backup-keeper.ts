import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { existsSync, statSync } from 'node:fs'
import { setPriority } from 'node:os'
import { join } from 'node:path'
import type { BackupState } from '@bayledger/contract/backup-state'
import { listBackups } from '@bayledger/db/backup/backup-folder'
import { hasRecipients, readRecipients } from '@bayledger/db/backup/backup-key'
import { type KeptLog, keepLog } from '@bayledger/db/backup/keep-log'
import { keepFiles } from '@bayledger/db/backup/kept-files'
import type { Config } from './config.ts'
import type { Clock } from './deps.ts'
import { dayAt } from './proof/digest-keeper.ts'

export type BackupKeeper = {
  readonly state: () => BackupState
  /** Copies the log and makes the backup that is due; resolves when the log is copied. */
  readonly look: () => Promise<void>
  /** Resolves when no backup is being made. */
  readonly made: () => Promise<void>
  /** Looks from now on, round by round. */
  readonly keep: () => void
  /** Ends a backup that is being made, and copies the log a last time. */
  readonly stop: () => Promise<void>
}

type BackupConfig = Pick<
  Config,
  'dataFolder' | 'digestFolder' | 'backupFolder' | 'backupKeep' | 'databaseUrl' | 'databaseOwnerUrl'
>

type Failing = 'log' | 'backup' | 'look'

/** Less than a minute, with the time that a round takes: no more than that is lost with the disk. */
const lookEveryMs = 45_000
const hour = 3_600_000
/** A night without a backup is noticed by the next noon. */
const oldAfterMs = 36 * hour

/**
 * Keeps the backups of the built-in PostgreSQL: its log in each round, and a backup after the close of the shop's day, at the
 * start of a line of the log, and when one was missed. What fails is said through `problem` and tried again, a backup an
 * hour later. Nothing happens until a key was made. A PostgreSQL of one's own (`superuserUrl` is `null`) keeps its log itself; the
 * backup of each day is made all the same.
 */
export const keepBackups = (parts: {
  readonly config: BackupConfig
  readonly superuserUrl: string | null
  readonly clock: Clock
  /** The zone by whose clocks the shop's day ends. */
  readonly timeZone: () => Promise<string>
  readonly problem: (words: string, error: unknown) => void
}): BackupKeeper => {
  const { config, superuserUrl, clock } = parts
  const { dataFolder, digestFolder, backupFolder } = config
  const filesKept = new Set<string>()
  const failing = new Set<Failing>()
  let log: KeptLog | null = null
  let logAt: Date | null = null
  let making: ChildProcess | null = null
  let made: Promise<void> = Promise.resolve()
  let nextTry = 0
  let told = 0
  let working: Promise<void> = Promise.resolve()

  const failed = (what: Failing, words: string, error: unknown) => {
    const now = clock.now().getTime()
    // The log fails each round: it is said once an hour.
    if (!failing.has(what) || now >= told + hour) {
      told = now
      parts.problem(words, error)
    }
    failing.add(what)
  }

  const copyLog = async (url: string, recipients: readonly string[]) => {
    const begun = clock.now()
    try {
      const folders = { signing: join(dataFolder, 'signing'), digests: digestFolder }
      log = await keepLog(
        {
          superuserUrl: url,
          folder: backupFolder,
          recipients,
          keepFiles: (folder) => keepFiles(folder, folders, recipients, filesKept),
        },
        log,
      )
      logAt = begun
      failing.delete('log')
    } catch (error) {
      failed(
        'log',
        'What was written could not be copied to the backups. It is safe on this disk only.',
        error,
      )
    }
  }

  /** `line`: of the log that the backup is followed by; `null`: by none. */
  const isDue = async (line: string | null): Promise<boolean> => {
    const newest = listBackups(backupFolder).find((backup) => (backup.log?.line ?? null) === line)
    if (newest === undefined) return true
    const zone = await parts.timeZone()
    return dayAt(newest.at, zone) !== dayAt(clock.now(), zone)
  }

  const makeBackup = async () => {
    nextTry = clock.now().getTime() + hour
    const child = startBackup(config)
    making = child
    let said = ''
    child.stderr?.on('data', (text) => {
      said += text
    })
    const [status] = await once(child, 'close')
    making = null
    if (status === 0) failing.delete('backup')
    else if (status !== null)
      failed('backup', 'The backup could not be made. It is tried again in an hour.', new Error(said.trim()))
  }

  const round = async () => {
    const recipients = await readRecipients(dataFolder)
    failing.delete('look')
    if (recipients.length === 0) return
    if (superuserUrl !== null) {
      await copyLog(superuserUrl, recipients)
      if (log === null) return
    }
    if (making !== null || clock.now().getTime() < nextTry || !(await isDue(log?.line ?? null))) return
    made = makeBackup().catch((error: unknown) => failed('backup', 'The backup could not be started.', error))
  }
  const inTurn = (): Promise<void> => {
    working = working
      .then(round)
      .catch((error: unknown) => failed('look', 'The backups could not be looked at.', error))
    return working
  }
  let timer: NodeJS.Timeout | undefined

  return {
    state: () => stateOf({ config, isFailing: failing.size > 0, keptUpTo: logAt, now: clock.now() }),
    look: inTurn,
    made: () => made,
    keep: () => {
      timer = setInterval(() => void inTurn(), lookEveryMs)
      timer.unref()
      void inTurn()
    },
    stop: async () => {
      clearInterval(timer)
      nextTry = Number.POSITIVE_INFINITY
      making?.kill()
      await made
      await inTurn()
    },
  }
}

/** In a process of its own that gives way to the service. */
const startBackup = (config: BackupConfig) => {
  const { days, weeks, months } = config.backupKeep
  const child = spawn(process.execPath, [join(import.meta.dirname, 'commands/backup.ts')], {
    env: {
      ...process.env,
      DATABASE_URL: config.databaseUrl ?? undefined,
      DATABASE_OWNER_URL: config.databaseOwnerUrl ?? undefined,
      DATA_FOLDER: config.dataFolder,
      DIGEST_FOLDER: config.digestFolder,
      BACKUP_FOLDER: config.backupFolder,
      BACKUP_KEEP: `${days},${weeks},${months}`,
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  if (child.pid !== undefined) setPriority(child.pid, 5)
  return child
}

const stateOf = (known: {
  readonly config: Pick<Config, 'dataFolder' | 'backupFolder'>
  readonly isFailing: boolean
  readonly keptUpTo: Date | null
  readonly now: Date
}): BackupState => {
  const { config, isFailing, keptUpTo, now } = known
  const looked = lookAt(config)
  const newest = looked?.newest
  const state = () => {
    if (isFailing || looked === null) return 'failing'
    if (newest !== undefined) return now.getTime() - newest.at.getTime() > oldAfterMs ? 'old' : 'fine'
    return looked.hasKey ? 'none-yet' : 'no-key'
  }
  return {
    state: state(),
    newestAt: newest?.at.toISOString() ?? null,
    keptUpTo: keptUpTo?.toISOString() ?? null,
    onDiskOfData: diskOf(config.backupFolder) === diskOf(config.dataFolder),
  }
}

/** `null`: the folder or the key cannot be read, which the next round says. */
const lookAt = ({ backupFolder, dataFolder }: Pick<Config, 'dataFolder' | 'backupFolder'>) => {
  try {
    return { newest: listBackups(backupFolder)[0], hasKey: hasRecipients(dataFolder) }
  } catch {
    return null
  }
}

const diskOf = (folder: string): number | null => (existsSync(folder) ? statSync(folder).dev : null)
