/** Why a database cannot be brought up to date, in words that say what to do. */
export class MigrationProblem extends Error {
  override readonly name = 'MigrationProblem'
}
