import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ensureOutsideTools } from './support/outside-tools.ts'

/**
 * What `npm test` runs: every check there is, one after the other, each with a line of progress. Ends with
 * `N passed, N failed`, counting each check and each test once; a skipped test counts as failed.
 */
const bin = (name: string): string => join('node_modules', '.bin', name)
const results = join(mkdtempSync(join(tmpdir(), 'bayledger-tests-')), 'vitest.json')

type Check = { readonly name: string; readonly command: string; readonly arguments: readonly string[] }
const checks: readonly Check[] = [
  { name: 'Prisma client', command: process.execPath, arguments: ['packages/db/src/commands/generate.ts'] },
  { name: 'format and lint', command: bin('biome'), arguments: ['ci', '--error-on-warnings', '.'] },
  { name: 'types', command: bin('tsc'), arguments: ['--noEmit', '-p', '.'] },
  { name: 'unused code', command: bin('knip'), arguments: ['--no-progress'] },
  {
    name: 'web build and budgets',
    command: bin('turbo'),
    arguments: ['run', 'build', '--output-logs=errors-only', '--no-update-notifier'],
  },
]

const run = (command: string, argv: readonly string[]): Promise<number> =>
  new Promise((resolve, reject) => {
    const child = spawn(command, argv, {
      stdio: 'inherit',
      env: {
        ...process.env,
        TURBO_TELEMETRY_DISABLED: '1',
        PATH: `${join('node_modules', '.bin')}:${process.env.PATH}`,
      },
    })
    child.on('error', reject)
    child.on('exit', (code) => resolve(code ?? 1))
  })

type Tally = { passed: number; failed: number }

const runTests = async (filters: readonly string[]): Promise<Tally> => {
  await run(bin('vitest'), [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${results}`,
    ...filters,
  ])
  const report: unknown = JSON.parse(readFileSync(results, 'utf8'))
  const count = (key: string): number => Number((report as Record<string, unknown>)[key] ?? 0)
  const unrun = count('numPendingTests') + count('numTodoTests')
  if (unrun > 0) console.error(`${unrun} tests were skipped; a skipped test counts as failed`)
  const brokenSuites =
    count('numTotalTests') === 0
      ? 1
      : count('numFailedTestSuites') > 0 && count('numFailedTests') === 0
        ? 1
        : 0
  return { passed: count('numPassedTests'), failed: count('numFailedTests') + unrun + brokenSuites }
}

const main = async (): Promise<void> => {
  const tally: Tally = { passed: 0, failed: 0 }
  ensureOutsideTools((line) => console.log(line))
  for (const check of checks) {
    const started = performance.now()
    const code = await run(check.command, check.arguments)
    console.log(
      `${code === 0 ? 'passed' : 'FAILED'}: ${check.name} (${((performance.now() - started) / 1000).toFixed(1)} s)`,
    )
    tally[code === 0 ? 'passed' : 'failed'] += 1
  }
  const tests = await runTests(process.argv.slice(2))
  rmSync(results, { force: true })
  console.log(`${tally.passed + tests.passed} passed, ${tally.failed + tests.failed} failed`)
  process.exitCode = tally.failed + tests.failed === 0 ? 0 : 1
}

await main()
