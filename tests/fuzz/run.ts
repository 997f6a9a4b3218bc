import { spawn, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { freePort } from '@bayledger/db/embedded/postmaster'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { withClient } from '@bayledger/db/with-client'
import { shopId } from '../../prisma/seeds/demo/places.ts'
import { mailServer } from '../support/mail-server.ts'
import { roleNames } from './callers.ts'
import { calledAs, fuzz } from './fuzz.ts'
import { outOfReach } from './out-of-reach.ts'

/**
 * `npm run -s fuzz -- --requests 20000 --seed 1`: the product as `npm start` runs it, with the demo shop, gets requests that
 * are made from its own OpenAPI document, as every role. None may be answered with a fault of the service, at a status that
 * is not declared, later than two seconds, or with a stack; its memory stays bounded; and everything that it accepted
 * verifies afterwards, by `ledger:verify` in a process that has never seen it. The last line counts; status 1 where
 * anything is wrong.
 */
const { values } = parseArgs({
  options: { requests: { type: 'string', default: '20000' }, seed: { type: 'string', default: '1' } },
})
const wholeNumber = (name: 'requests' | 'seed'): number => {
  const number = Number(values[name])
  if (Number.isSafeInteger(number) && number > 0) return number
  console.error(`--${name} is "${values[name]}"; it takes a whole number of 1 or more.`)
  process.exit(2)
}
const requests = wholeNumber('requests')
const seed = wholeNumber('seed')

/** The heap may hold so much; what all of the process takes must stay below the second figure. In megabytes. */
const heapMegabytes = 384
const mostMegabytes = 1_000
/** With so many requests each operation has its turn. */
const enoughForAll = 5_000
/** With so many each has its chances to succeed too: what it needs is told by and by. */
const enoughToSucceed = 20_000

const built = spawnSync(
  join('node_modules', '.bin', 'turbo'),
  ['run', 'build', '--output-logs=errors-only', '--no-update-notifier'],
  { encoding: 'utf8', env: { ...process.env, TURBO_TELEMETRY_DISABLED: '1' } },
)
if (built.status !== 0) {
  console.error(`${built.stdout}${built.stderr}`)
  process.exit(2)
}

const data = mkdtempSync(join(tmpdir(), 'bayledger-fuzz-'))
const postgres = await startEmbeddedPostgres({ dataFolder: data, progress: (line) => console.error(line) })
const port = await freePort()
const mail = await mailServer()
await mail.start()
const environment = {
  ...process.env,
  DATABASE_URL: postgres.serviceUrl,
  DATABASE_OWNER_URL: postgres.ownerUrl,
  DATA_FOLDER: data,
  SHOP_SEED: 'demo-day',
  PORT: String(port),
  SMTP_URL: mail.url,
  MAIL_FROM: 'desk@tamber.example',
  CALLS_PER_MINUTE: '1000000',
  LOG_LEVEL: 'error',
}
const service = spawn(
  process.execPath,
  [`--max-old-space-size=${heapMegabytes}`, 'apps/api/src/commands/serve.ts'],
  { env: environment, stdio: ['ignore', 'pipe', 'inherit'] },
)
try {
  await new Promise<void>((resolve, reject) => {
    service.stdout.on('data', (text: Buffer) => {
      if (text.includes('is ready')) resolve()
    })
    service.on('exit', (code) => reject(new Error(`the service ended with ${code}`)))
  })
  let problems = 0
  const problem = (words: string) => {
    problems += 1
    console.log(words)
  }
  let megabytes = 0
  const { faults, statuses, accepted, operations, reached, called, slowestMs, late } = await fuzz(
    { address: `http://localhost:${port}`, ownerUrl: postgres.ownerUrl, now: Date.now, ...(await shopOf()) },
    {
      requests,
      seed,
      rightFirst: 40,
      slowestMs: 2_000,
      say: (line) => {
        megabytes = Math.max(megabytes, megabytesOf(service.pid ?? 0))
        console.log(`${line}, ${megabytes} MB at most`)
      },
    },
  )
  for (const [status, count] of [...statuses].toSorted()) console.log(`  ${status} answered ${count} times`)
  console.log(
    `operations ${operations.length}, called by ${roleNames.map((role) => `${role} ${operations.filter((one) => called.has(calledAs(one, role))).length}`).join(', ')}`,
  )
  const uncalled = operations.filter((one) => !roleNames.some((role) => called.has(calledAs(one, role))))
  if (requests >= enoughForAll && uncalled.length > 0) problem(`never called: ${uncalled.join(', ')}`)
  const refused = operations.filter((one) => !reached.has(one))
  for (const operation of refused)
    console.log(
      `never answered with success: ${operation}${operation in outOfReach ? ` (${outOfReach[operation]})` : ''}`,
    )
  const unknown = refused.filter((operation) => !(operation in outOfReach))
  if (requests >= enoughToSucceed && unknown.length > 0)
    problem(`never answered with success, and not known to be out of reach: ${unknown.join(', ')}`)
  console.log(
    `entries accepted ${accepted.length}, operations that were answered with success ${reached.size}, slowest ${Math.round(slowestMs)} ms (${late} later than 2 s, none of them twice or a fault above), memory at most ${megabytes} MB`,
  )
  if (megabytes > mostMegabytes) problem(`the service took ${megabytes} MB; ${mostMegabytes} are allowed`)
  const missing = await missingOf(accepted)
  if (missing > 0) problem(`${missing} accepted entries are not in the database`)
  const verified = spawnSync(process.execPath, ['apps/api/src/commands/verify-ledger.ts'], {
    env: environment,
    encoding: 'utf8',
  })
  console.log(verified.stdout.trimEnd())
  if (verified.status !== 0) problem('what was accepted does not verify')
  console.log(`requests ${requests}, faults ${faults.length + problems}`)
  process.exitCode = faults.length + problems === 0 ? 0 : 1
} finally {
  service.removeAllListeners('exit')
  const ended = new Promise((resolve) => service.on('exit', resolve))
  if (service.exitCode === null && service.kill('SIGTERM')) await ended
  await mail.stop()
  await postgres.stop()
  rmSync(data, { recursive: true, force: true })
}

/** The demo shop, an order of it that waits for its customer, and a place for the tablet. */
function shopOf(): Promise<{
  readonly shopId: string
  readonly orderId: string
  readonly locationId: string
}> {
  return withClient(postgres.ownerUrl, async (client) => {
    const { rows } = await client.query<{ order_id: string; location_id: string }>(
      `select order_id, location_id from order_heads where shop_id = $1
        and order_id in (select order_id from entries where kind = 'estimate.issued')
        and order_id not in (select order_id from entries where kind = 'estimate.decided')
        order by number limit 1`,
      [shopId],
    )
    const [order] = rows
    if (!order) throw new Error('the demo has no order that waits for its customer')
    return { shopId, orderId: order.order_id, locationId: order.location_id }
  })
}

function missingOf(ids: readonly string[]): Promise<number> {
  return withClient(postgres.ownerUrl, async (client) => {
    const { rows } = await client.query<{ held: string }>(
      'select count(*) as held from entries where id = any ($1::uuid[])',
      [ids],
    )
    return new Set(ids).size - Number(rows[0]?.held ?? 0)
  })
}

/** What the process keeps in memory, in megabytes (Linux; elsewhere 0). */
function megabytesOf(pid: number): number {
  try {
    const kilobytes = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]
    return Math.round(Number(kilobytes ?? 0) / 1024)
  } catch {
    return 0
  }
}
