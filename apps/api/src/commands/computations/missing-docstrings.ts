import type { Computation } from './read-docstrings.ts'

/** A line for each exported function that does not say what it does and where that comes from. */
export const missingDocstrings = (computations: readonly Computation[]): string[] =>
  computations
    .filter(({ prose, tags }) => prose === '' || !tags.source)
    .map(
      ({ name, file, prose }) =>
        `packages/reckoning/src/${file}: ${name} has no ${prose === '' ? 'docstring' : '@source'}; write above it what it does, then @formula, @units and @limits where they say something, and @source: document, section and how sure (read, quoted, from memory, computed from definition), or "common practice, no source", or "this program's own rule"`,
    )
