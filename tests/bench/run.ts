import { randomBytes } from 'node:crypto'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { startEmbeddedPostgres } from '@bayledger/db/embedded/start'
import { openPool } from '@bayledger/db/pool'
import { fold } from '@bayledger/ledger/fold/fold'
import type { Foldable } from '@bayledger/ledger/fold/foldable'
import { personalDigest } from '@bayledger/ledger/hash-chain'
import { diagnose } from '@bayledger/reckoning/diagnosis/diagnose'
import { people } from '../../prisma/seeds/demo/people.ts'
import { demoShop } from '../../prisma/seeds/demo-shop.ts'
import { startService } from '../support/start-service.ts'
import { quantile, timesOf } from './statistics.ts'

/**
 * `npm run bench`: speed as ratios inside one run, on this machine only, bounded in count. Each figure of the product
 * is divided by the barest way to the same thing, measured in the same minute; only the ratios carry over.
 */
const runs = 300
const folder = mkdtempSync(join(tmpdir(), 'bayledger-bench-'))

console.log('Starting PostgreSQL and the demo shop')
const postgres = await startEmbeddedPostgres({ dataFolder: folder, progress: console.log })
const service = await startService(postgres.url)
const pool = openPool({ url: postgres.url, size: 2, onIdleError: console.error })

type Row = { what: string; times: readonly number[]; bare: readonly number[] | null }
const rows: Row[] = []
const measure = async (what: string, count: number, run: () => unknown, bare: (() => unknown) | null) => {
  console.log(`${what} …`)
  for (let warm = 0; warm < 20; warm += 1) await run()
  rows.push({
    what,
    times: await timesOf(count, run),
    bare: bare === null ? null : await timesOf(count, bare),
  })
}

try {
  const signIn = await fetch(`${service.address}/api/sessions/desk`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin' },
    body: JSON.stringify({ name: people.ottoline.signInName, password: people.ottoline.password }),
  })
  const cookie = signIn.headers
    .getSetCookie()
    .map((set) => set.split(';')[0])
    .join('; ')
  const headers = { cookie, 'content-type': 'application/json', 'sec-fetch-site': 'same-origin' }
  const get = async (path: string): Promise<unknown> => {
    const reply = await fetch(service.address + path, { headers })
    if (!reply.ok) throw new Error(`${path} answered ${reply.status}`)
    return reply.json()
  }
  const floor = (await get('/api/floor')) as { rows: { orderId: string; isOpen: boolean }[] }
  const orderId = floor.rows.find(({ isOpen }) => isOpen)?.orderId ?? ''

  await measure(
    'read the floor list',
    runs,
    () => get('/api/floor'),
    () =>
      pool.query({
        name: 'bench-heads',
        text: 'select order_id, number, agenda from order_heads where is_open',
      }),
  )
  await measure(
    'read one order, whole',
    runs,
    () => get(`/api/orders/${orderId}`),
    () =>
      pool.query({
        name: 'bench-entries',
        text: 'select * from entries where order_id = $1 order by seq',
        values: [orderId],
      }),
  )
  await pool.query('create table bench_rows (id bigserial primary key, text text)')
  await measure(
    'append one entry, durable',
    runs,
    () => append(headers, orderId),
    () =>
      pool.query({
        name: 'bench-insert',
        text: 'insert into bench_rows (text) values ($1)',
        values: ['x'.repeat(800)],
      }),
  )

  const demo = demoShop('2026-01-12T16:40:00.000Z')
  const longest = demo.orders
    .map(({ entries }) => entries)
    .reduce((one, other) => (one.length > other.length ? one : other))
  const issued = longest.find((entry) => entry.kind === 'diagnosis.issued')
  if (issued?.kind !== 'diagnosis.issued') throw new Error('the longest demo order has no findings')
  const text = JSON.stringify(issued.payload.evidence)
  await measure(
    'diagnose, next checks included',
    runs,
    () => diagnose(issued.payload.evidence),
    () => JSON.parse(text),
  )
  const entries = longest as readonly Foldable[]
  const ledgerText = JSON.stringify(entries)
  await measure(
    `fold ${entries.length} entries`,
    runs,
    () => fold(entries),
    () => JSON.parse(ledgerText),
  )
  print()
} finally {
  await pool.end()
  await service.stop()
  await postgres.stop()
  rmSync(folder, { recursive: true, force: true })
}

async function append(headers: Record<string, string>, orderId: string): Promise<void> {
  const salt = randomBytes(32)
  const words = `Note of the bench ${salt.toString('hex')}`
  const digest = personalDigest(words, salt)
  const entry = {
    id: crypto.randomUUID(),
    orderId,
    kind: 'note.added',
    version: 1,
    payload: { words: digest },
    writtenAt: new Date().toISOString(),
    restsOn: [],
  }
  const reply = await fetch(`${service.address}/api/entries`, {
    method: 'POST',
    headers,
    body: JSON.stringify({
      entries: [entry],
      texts: [{ digest, salt: salt.toString('base64'), text: words }],
    }),
  })
  const body = (await reply.json()) as { results?: { result: string }[] }
  if (body.results?.[0]?.result !== 'accepted') throw new Error(`not accepted: ${JSON.stringify(body)}`)
}

function print(): void {
  const shown = (value: number) => value.toFixed(value < 1 ? 3 : 2).padStart(9)
  console.log(`\n${'what'.padEnd(34)}   p50 ms    p99 ms  bare p50   ratio`)
  for (const { what, times, bare } of rows) {
    const p50 = quantile(times, 0.5)
    const bare50 = bare === null ? null : quantile(bare, 0.5)
    console.log(
      `${what.padEnd(34)}${shown(p50)} ${shown(quantile(times, 0.99))} ${bare50 === null ? '' : `${shown(bare50)} ${(p50 / bare50).toFixed(1).padStart(7)}`}`,
    )
  }
}
