/** What keeps the shop's own PostgreSQL from running, in words that say what to do. */
export class EmbeddedPostgresProblem extends Error {
  override readonly name = 'EmbeddedPostgresProblem'
}
