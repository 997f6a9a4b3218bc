import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

/** Projects that need no server start none; the others share one PostgreSQL a run each. */
const DATABASE = ['tests/support/database-server.ts']

/** How long what is looked at again and again may take: a busy machine is slow, and a test is over sooner where it is not. */
const PATIENT = { poll: { timeout: 60_000 } }

/**
 * `isolate: false`: the files of a project share their modules within one worker, which saves loading them anew for
 * every file. It is set where the code under test keeps no state between tests.
 */
export default defineConfig({
  test: {
    // Five workers on two cores: tests wait for servers, browsers and disks, and four left a tenth of the cores idle.
    maxWorkers: Math.max(5, availableParallelism() - 1),
    // Node loads the sources, as in the service, which is quicker: docs/decisions/0036-tests-load-modules-by-node.md
    experimental: { viteModuleRunner: false, nodeLoader: false },
    projects: [
      {
        test: {
          name: 'unit',
          include: ['packages/**/*.test.ts', 'apps/**/*.test.ts', 'prisma/**/*.test.ts'],
          testTimeout: 240_000,
          hookTimeout: 120_000,
          isolate: false,
        },
      },
      {
        // What a screen shows, drawn as HTML without a browser. Node itself reads no JSX: these few go through the bundler.
        oxc: { jsx: { runtime: 'automatic' } },
        test: {
          name: 'screens',
          include: ['apps/web/src/**/*.test.tsx'],
          experimental: { viteModuleRunner: true },
        },
      },
      {
        test: {
          name: 'published',
          include: ['tests/published/**/*.test.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
          isolate: false,
        },
      },
      {
        test: {
          name: 'house',
          include: ['tests/house/**/*.test.ts', 'tests/bench/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 60_000,
          isolate: false,
        },
      },
      {
        test: {
          name: 'simulate',
          include: ['tests/simulate/**/*.test.ts'],
          testTimeout: 120_000,
          isolate: false,
        },
      },
      {
        test: {
          name: 'api',
          include: ['tests/api/**/*.test.ts', 'tests/database/**/*.test.ts', 'tests/fuzz/**/*.test.ts'],
          globalSetup: DATABASE,
          expect: PATIENT,
          testTimeout: 60_000,
          hookTimeout: 120_000,
          isolate: false,
        },
      },
      {
        test: {
          name: 'faults',
          include: ['tests/faults/**/*.test.ts'],
          globalSetup: DATABASE,
          expect: PATIENT,
          testTimeout: 240_000,
          hookTimeout: 240_000,
          isolate: false,
        },
      },
      {
        test: {
          name: 'journeys',
          include: ['tests/journeys/**/*.test.ts'],
          globalSetup: DATABASE,
          expect: PATIENT,
          testTimeout: 600_000,
          hookTimeout: 600_000,
          isolate: false,
        },
      },
    ],
  },
})
