/** What keeps a backup from being made, opened or restored, in words that say what to do. */
export class BackupProblem extends Error {
  override readonly name = 'BackupProblem'
}
