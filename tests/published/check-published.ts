import type { TestCase, TestModule } from 'vitest/node'
import { startVitest } from 'vitest/node'

/** Prints one line a source (source, checks, passed) and ends with `N passed, N failed`; a skipped check failed. */
type Tally = { checks: number; passed: number }

const tallies = new Map<string, Tally>()
const said: string[] = []

const count = (source: string, test: TestCase): void => {
  const tally = tallies.get(source) ?? { checks: 0, passed: 0 }
  const passed = test.result().state === 'passed'
  tallies.set(source, { checks: tally.checks + 1, passed: tally.passed + (passed ? 1 : 0) })
  if (passed) return
  const reason = test.result().errors?.[0]?.message ?? 'it did not run'
  said.push(`${source}\n  ${test.name}: ${reason}`)
}

const countModule = (module: TestModule): void => {
  for (const error of module.errors()) said.push(`${module.moduleId}: ${error.message}`)
  for (const top of module.children)
    if (top.type === 'suite') for (const test of top.children.allTests()) count(top.name, test)
}

const vitest = await startVitest(
  'test',
  [],
  { watch: false, project: ['published'], reporters: [{ onTestModuleEnd: countModule }] },
  {},
)
await vitest.close()

const lines = [...tallies].sort(([one], [other]) => one.localeCompare(other))
for (const [source, { checks, passed }] of lines) console.log(`${source}: ${checks} checks, ${passed} passed`)
for (const words of said) console.error(words)
const sum = (of: (tally: Tally) => number): number => lines.reduce((total, [, tally]) => total + of(tally), 0)
const passed = sum((tally) => tally.passed)
const failed = sum((tally) => tally.checks) - passed
console.log(`${lines.length} sources`)
console.log(`${passed} passed, ${failed} failed`)
process.exitCode = failed > 0 || said.length > 0 || passed === 0 ? 1 : 0
