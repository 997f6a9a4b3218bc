import type { BackupState } from '@bayledger/contract/backup-state'

/** What a service says of backups where nobody made a key. */
export const noBackups: BackupState = {
  state: 'no-key',
  newestAt: null,
  keptUpTo: null,
  onDiskOfData: false,
}
