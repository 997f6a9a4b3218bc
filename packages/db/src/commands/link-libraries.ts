import { findBinaries } from '../embedded/binaries.ts'
import { EmbeddedPostgresProblem } from '../embedded/problem.ts'

/**
 * Makes the built-in PostgreSQL loadable while its folder can still be written, so that a service may run on files that it cannot
 * change. A machine for which none comes along needs an outside PostgreSQL, which is said and is no failure.
 */
try {
  findBinaries()
} catch (error) {
  if (!(error instanceof EmbeddedPostgresProblem)) throw error
  console.log(error.message)
}
