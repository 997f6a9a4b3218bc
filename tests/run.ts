import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ensureOutsideTools } from './support/outside-tools.ts'

/**
 * What `npm test` runs: every check there is, each with a line of progress. Ends with `N passed, N failed`, counting
 * each check and each test once; a skipped test counts as failed.
 */
const bin = (name: string): string => join('node_modules', '.bin', name)
const results = join(mkdtempSync(join(tmpdir(), 'bayledger-tests-')), 'vitest.json')

type Check = { readonly name: string; readonly command: string; readonly arguments: readonly string[] }

/** The others read what it writes. */
const first: Check = {
  name: 'Prisma client',
  command: process.execPath,
  arguments: ['packages/db/src/commands/generate.ts'],
}

/** Both lists run at the same time, each on a core of its own. */
const checks: readonly (readonly Check[])[] = [
  [
    {
      name: 'types',
      command: process.execPath,
      // One checker: several check what they share once each, which costs two cores more than it gives them.
      arguments: ['node_modules/typescript-7/bin/tsc', '--noEmit', '--checkers', '1', '-p', '.'],
    },
  ],
  [
    { name: 'format and lint', command: bin('biome'), arguments: ['ci', '--error-on-warnings', '.'] },
    {
      name: 'web build and budgets',
      command: bin('turbo'),
      arguments: ['run', 'build', 'compress', '--output-logs=errors-only', '--no-update-notifier'],
    },
  ],
]

type Ended = { readonly code: number; readonly output: string }

/** Runs a command to its end. Its output is shown at once, or kept so that two commands do not mix theirs. */
const run = (command: string, argv: readonly string[], output: 'shown' | 'kept'): Promise<Ended> =>
  new Promise((resolve, reject) => {
    let kept = ''
    const child = spawn(command, argv, {
      stdio: output === 'shown' ? 'inherit' : ['ignore', 'pipe', 'pipe'],
      env: {
        ...process.env,
        TURBO_TELEMETRY_DISABLED: '1',
        // Tests start hundreds of processes: what each compiles is kept for the next.
        NODE_COMPILE_CACHE: join(import.meta.dirname, '../node_modules/.cache/node'),
        PATH: `${join('node_modules', '.bin')}:${process.env.PATH}`,
      },
    })
    for (const stream of [child.stdout, child.stderr])
      stream?.setEncoding('utf8').on('data', (text: string) => {
        kept += text
      })
    child.on('error', reject)
    child.on('close', (code) => resolve({ code: code ?? 1, output: kept }))
  })

type Tally = { passed: number; failed: number }

const runCheck = async (check: Check, tally: Tally): Promise<void> => {
  const started = performance.now()
  const { code, output } = await run(check.command, check.arguments, 'kept')
  const seconds = ((performance.now() - started) / 1000).toFixed(1)
  if (output !== '') console.log(output.trimEnd())
  console.log(`${code === 0 ? 'passed' : 'FAILED'}: ${check.name} (${seconds} s)`)
  tally[code === 0 ? 'passed' : 'failed'] += 1
}

const runTests = async (filters: readonly string[]): Promise<Tally> => {
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${results}`]
  await run(bin('vitest'), ['run', ...reporters, ...filters], 'shown')
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
  await runCheck(first, tally)
  await Promise.all(
    checks.map(async (list) => {
      for (const check of list) await runCheck(check, tally)
    }),
  )
  const tests = await runTests(process.argv.slice(2))
  rmSync(results, { force: true })
  console.log(`${tally.passed + tests.passed} passed, ${tally.failed + tests.failed} failed`)
  process.exitCode = tally.failed + tests.failed === 0 ? 0 : 1
}

await main()
