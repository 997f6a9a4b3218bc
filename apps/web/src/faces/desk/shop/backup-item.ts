import type { BackupState } from '@bayledger/contract/backup-state'

/** The words for the shop's backups; `shown` gives an instant on the shop's clock. */
export const backupItem = (backups: BackupState, shown: (instant: string) => string) => ({
  key: 'backups' as const,
  title: 'Backups',
  isThere: backups.state === 'fine' && !backups.onDiskOfData,
  now: nowOf(backups, shown),
  without: withoutOf(backups),
  doWords: toDo[backups.state],
})

const nowOf = ({ newestAt, keptUpTo }: BackupState, shown: (instant: string) => string): string => {
  if (newestAt === null) return 'no backup'
  const newest = `the newest backup is from ${shown(newestAt)}`
  return keptUpTo === null
    ? newest
    : `${newest}, and what was written since is copied up to ${shown(keptUpTo)}`
}

const withoutOf = ({ state, onDiskOfData }: BackupState): string =>
  state === 'fine' && onDiskOfData
    ? 'The backups are on the same disk as the shop: if it breaks, both are gone.'
    : 'Nothing stays shut. If the disk breaks, what no backup holds is gone.'

/** What to do, on the machine that the shop runs on. */
const toDo: Readonly<Record<BackupState['state'], string>> = {
  fine: 'Set BACKUP_FOLDER to another disk, and try each month whether the newest one opens: npm run restore:rehearse',
  'no-key':
    'On the machine itself: npm run backup:key, and keep what it shows elsewhere. Then set BACKUP_FOLDER to another disk.',
  'none-yet':
    'The first one is made by itself within minutes. With a PostgreSQL of your own: npm run backup, each night.',
  old: 'On the machine itself: npm run backup. It says what keeps it from being made.',
  failing:
    'On the machine itself: npm run backup. It says what keeps it from being made; look first whether the disk is there and has room.',
}
