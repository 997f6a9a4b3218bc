import { globSync } from 'node:fs'
import { join, relative } from 'node:path'
import type { TestModule } from 'vitest/node'
import { startVitest } from 'vitest/node'
import { outcomeOf, type Tally } from './tally.ts'

/**
 * `npm run -s check:published` prints one line a source (source, checks, passed) and ends with `N passed, N failed`.
 * Conventions of our own are printed too; they count only where one fails.
 * Another folder may be named. What does not load, was skipped or holds no check has failed.
 */
const root = join(import.meta.dirname, '..', '..')
const folder = process.argv[2] ?? 'tests/published'

const modules: TestModule[] = []
const unhandled: string[] = []
const vitest = await startVitest(
  'test',
  [],
  {
    config: false,
    root,
    include: [`${folder}/**/*.test.ts`],
    testTimeout: 60_000,
    watch: false,
    reporters: [
      {
        onTestRunEnd: (ended, errors) => {
          modules.push(...ended)
          unhandled.push(...errors.map(({ message }) => message))
        },
      },
    ],
  },
  {},
)
await vitest.close()

const ended = new Set(modules.map(({ moduleId }) => relative(root, moduleId)))
const unrun = globSync(`${folder}/**/*.test.ts`, { cwd: root }).filter((file) => !ended.has(file))
const outcome = outcomeOf(root, modules)
const faults = [...outcome.faults, ...unhandled, ...unrun.map((file) => `${file}: it did not run`)]

const tallies = [...outcome.tallies].sort((one, other) => one.source.localeCompare(other.source))
for (const { source, checks, passed } of tallies) console.log(`${source}: ${checks} checks, ${passed} passed`)
for (const fault of faults) console.error(fault)

const sum = (of: readonly Tally[], figure: (tally: Tally) => number): number =>
  of.reduce((total, tally) => total + figure(tally), 0)
const sources = tallies.filter(({ isConvention }) => !isConvention)
const conventions = tallies.filter(({ isConvention }) => isConvention)
const passed = sum(sources, (tally) => tally.passed)
const unpassed = sum(tallies, (tally) => tally.checks - tally.passed)
// A file that does not load has no checks to count; it is at least one that failed.
const failed = Math.max(unpassed, faults.length)
console.log(`${sources.length} sources`)
if (conventions.length > 0) {
  const held = sum(conventions, (tally) => tally.passed)
  console.log(`${conventions.length} conventions of our own, held by ${held} checks that are not counted`)
}
console.log(`${passed} passed, ${failed} failed`)
process.exitCode = failed > 0 || passed === 0 ? 1 : 0
