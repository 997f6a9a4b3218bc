import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { migrate } from '@bayledger/db/migrations/migrate'
import { withClient } from '@bayledger/db/with-client'
import { ensureOutsideTools } from '../support/outside-tools.ts'
import { loadShopWithoutOrders } from '../support/shop-without-orders.ts'
import { runAll } from './all/run-all.ts'
import { addedUp, runRounds, seedsOf } from './support/rounds.ts'

/**
 * `npm run faults -- --all`: every other kind of fault, each its own number of rounds, or `--rounds` of each; `--kind` one of them.
 * `npm run faults -- --rounds 20 --seed 1`: two tablets in a real Chromium on bad networks, with a server that is killed and
 * tablets that die. A round waits more than it computes, so `--shops` of them (2) are under way at once, each with a service,
 * a database and tablets of its own. The last line counts; status 1 where anything is lost, doubled, apart or broken.
 */
const { values } = parseArgs({
  options: {
    all: { type: 'boolean', default: false },
    kind: { type: 'string' },
    rounds: { type: 'string' },
    seed: { type: 'string' },
    shops: { type: 'string' },
  },
})
const wholeNumber = (name: 'rounds' | 'seed' | 'shops', otherwise: string): number => {
  const given = values[name] ?? otherwise
  const number = Number(given)
  if (Number.isSafeInteger(number) && number > 0) return number
  console.error(`--${name} is "${given}"; it takes a whole number of 1 or more.`)
  process.exit(2)
}
const seed = wholeNumber('seed', '1')
const isAll = values.all || values.kind !== undefined
const rounds = wholeNumber('rounds', '20')
const shops = Math.min(wholeNumber('shops', '2'), rounds)

ensureOutsideTools((line) => console.log(line))
const built = spawnSync(
  join('node_modules', '.bin', 'turbo'),
  ['run', 'build', '--output-logs=errors-only', '--no-update-notifier'],
  { encoding: 'utf8', env: { ...process.env, TURBO_TELEMETRY_DISABLED: '1' } },
)
if (built.status !== 0) {
  console.error(`${built.stdout}${built.stderr}`)
  process.exit(2)
}

if (isAll) {
  const only = values.kind ?? null
  const counted = values.rounds === undefined ? null : rounds
  process.exit(await runAll({ rounds: counted, seed, only }, (line) => console.log(line)))
}

const dataFolder = mkdtempSync(join(tmpdir(), 'bayledger-faults-'))
// The service is killed, PostgreSQL never is: nothing hangs on what it flushes.
const postgres = await startEmbeddedPostgres({
  dataFolder,
  progress: (line) => console.error(line),
  settings: { fsync: 'off', synchronous_commit: 'off', full_page_writes: 'off' },
})
try {
  await migrate(postgres.ownerUrl, { serviceRole: new URL(postgres.serviceUrl).username })
  await loadShopWithoutOrders(postgres.serviceUrl, new Date().toISOString())
  const databases = [postgres, ...(await copies(shops - 1))]
  const seeds = seedsOf({ rounds, seed })
  const tallies = await Promise.all(
    databases.map((database) => runRounds(database, seeds, (line) => console.log(line))),
  )
  const { entries, lost, twice, diverged, broken } = tallies.reduce(addedUp)
  if (broken > 0) console.log(`${broken} of ${rounds} rounds did not end as they should; see above`)
  console.log(`entries ${entries}, lost ${lost}, twice ${twice}, diverged ${diverged}`)
  process.exitCode = lost + twice + diverged + broken === 0 ? 0 : 1
} finally {
  await postgres.stop()
  rmSync(dataFolder, { recursive: true, force: true })
}

/** So many databases with the same shop. */
async function copies(count: number): Promise<{ readonly ownerUrl: string; readonly serviceUrl: string }[]> {
  const source = new URL(postgres.ownerUrl).pathname.slice(1)
  const names = Array.from({ length: count }, (_, index) => `${source}_${index + 2}`)
  const at = (url: string, name: string): string => Object.assign(new URL(url), { pathname: `/${name}` }).href
  const elsewhere = at(postgres.ownerUrl, 'postgres')
  await withClient(elsewhere, async (owner) => {
    for (const name of names) await owner.query(`create database ${name} template ${source}`)
  })
  return names.map((name) => ({
    ownerUrl: at(postgres.ownerUrl, name),
    serviceUrl: at(postgres.serviceUrl, name),
  }))
}
