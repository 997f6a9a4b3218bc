import * as z from 'zod/mini'

/** How the shop's backups are, as far as the machine that makes them can say. */
export const BackupState = z.strictObject({
  /**
   * `fine`: the newest is less than a day and a half old and nothing failed since. `no-key`: nobody made a key, so there
   * are none. `none-yet`; `old`: it is due. `failing`: the last try failed; the log of the service says why.
   */
  state: z.enum(['fine', 'no-key', 'none-yet', 'old', 'failing']),
  newestAt: z.nullable(z.iso.datetime()),
  /** Everything written up to then can be restored, whatever happens to the disk of the database; `null`: only backups. */
  keptUpTo: z.nullable(z.iso.datetime()),
  /** A broken disk would take the backups too. */
  onDiskOfData: z.boolean(),
})
export type BackupState = z.infer<typeof BackupState>
