import { join } from 'node:path'
import { defineConfig } from 'vitest/config'

/** The copy of the tree in which the mutation run works; its node_modules is a link to the real one. */
const root = join(import.meta.dirname, '..', '..')
const fewerRuns = join(root, 'tests/mutation/fewer-runs.ts')

/**
 * The tests that a mutant of reckoning has to get past. The workspace's own links lead to the real tree, so imports
 * by package name are turned to the copy, which is where the mutants are.
 */
export default defineConfig({
  root,
  plugins: [
    {
      name: 'fewer-runs',
      enforce: 'pre',
      resolveId: (id, importer) =>
        id === 'fast-check' && importer?.includes('/reckoning/src/diagnosis/') ? fewerRuns : null,
    },
  ],
  resolve: {
    alias: [
      { find: /^@bayledger\/reckoning\/(.+)$/, replacement: join(root, 'packages/reckoning/src/$1.ts') },
    ],
  },
  test: {
    include: [...(process.env.MUTATION_TESTS ?? '').split(','), 'tests/published/**/*.test.ts'],
    exclude: ['tests/published/sample-report.test.ts'],
    isolate: false,
    testTimeout: 60_000,
  },
})
