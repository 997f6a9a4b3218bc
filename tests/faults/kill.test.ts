import { type ChildProcess, spawn } from 'node:child_process'
import { createHash, randomBytes, randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import { agreementOf, withProof } from '@bayledger/ledger/agreement'
import { sideDigest } from '@bayledger/ledger/digests'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { DemoLine } from '../../prisma/seeds/demo/order-pen.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy, freshLines } from '../support/fresh-copy.ts'
import { envelopeOf, type Replay, replayOn } from '../support/replay-order.ts'

/** The service is killed in mid-write, five times; what it had acknowledged is there each time. */
const kills = 5
const writers = 6

let shop: TestApp
let orderId: string
let cookie: string
/** An order of which all is done but its report, and the hand-back that is to follow that. */
let finished: { readonly orderId: string; readonly handBack: DemoLine }
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  await replay.sendUntil(order.lines, ({ draft }) => draft.kind === 'wheel.checked')
  finished = await finishedOrder(replay)
  // The killed processes run on the real clock, and so must the session.
  shop.clock.set(new Date().toISOString())
  cookie = (await shop.desk('ottoline')).cookies.join('; ')
})
const started: ChildProcess[] = []
afterAll(() => {
  for (const child of started) child.kill('SIGKILL')
  return shop.stop()
})

type Running = { readonly child: ChildProcess; readonly address: string }

const startServer = async (): Promise<Running> => {
  const child = spawn(process.execPath, ['tests/faults/support/serve.ts', shop.url], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  started.push(child)
  if (!child.stdout) throw new Error('no output to read the address from')
  const [address] = (await once(createInterface({ input: child.stdout }), 'line')) as [string]
  return { child, address }
}

const finishedOrder = async (replay: Replay) => {
  const done = shop.demo.orders.find(({ number }) => number === 'T-2605')
  if (!done?.end) throw new Error('the demo has no T-2605 that was handed back')
  const { orderId, lines } = freshLines({ ...done, lines: [...done.lines, done.end.handBack] })
  const handBack = lines.at(-1)
  if (!handBack) throw new Error('a copy has the lines of what it copies')
  await replay.sendUntil(lines.slice(0, -1))
  return { orderId, handBack }
}

const post = (address: string, path: string, body: object): Promise<Response> =>
  fetch(`${address}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin', cookie },
    body: JSON.stringify(body),
  })

const note = () => {
  const salt = randomBytes(32)
  const text = 'A note among many.'
  const digest = sideDigest(text, salt)
  return {
    entries: [
      {
        id: randomUUID(),
        orderId,
        kind: 'note.added',
        version: 1,
        payload: { words: digest },
        writtenAt: '2026-01-12T14:00:00.000Z',
        restsOn: [],
      },
    ],
    sides: [{ digest, salt: salt.toString('base64'), text }],
  }
}

const send = async (address: string, body: object): Promise<string> => {
  const reply = await post(address, '/api/entries', body)
  const { results } = (await reply.json()) as { results: [{ result: string }] }
  return results[0].result
}

describe('killing the server in mid-write', () => {
  it('loses no acknowledged entry and writes none twice, five times over', async () => {
    const acknowledged = new Set<string>()
    const unsure: ReturnType<typeof note>[] = []
    for (let kill = 0; kill < kills; kill += 1) {
      const { child, address } = await startServer()
      // What the last one left unsure is sent again first, as a tablet does.
      for (const body of unsure.splice(0)) {
        expect(['accepted', 'known']).toContain(await send(address, body))
        acknowledged.add(body.entries[0]?.id ?? '')
      }
      const before = acknowledged.size
      let alive = true
      const write = async (): Promise<void> => {
        while (alive) {
          const body = note()
          try {
            expect(await send(address, body)).toBe('accepted')
            acknowledged.add(body.entries[0]?.id ?? '')
          } catch (error) {
            if (alive && !(error instanceof TypeError)) throw error
            unsure.push(body)
            return
          }
          if (acknowledged.size - before >= 5 + kill * 3 && alive) {
            alive = false
            child.kill('SIGKILL')
          }
        }
      }
      await Promise.all(Array.from({ length: writers }, write))
      if (child.exitCode === null && child.signalCode === null) await once(child, 'exit')
      expect(child.signalCode).toBe('SIGKILL')
    }

    const pool = openPool({ url: shop.url, onIdleError: () => undefined })
    const { rows } = await pool.query(
      'select id, count(*)::int as times from entries where order_id = $1 group by id',
      [orderId],
    )
    await pool.end()
    expect(rows.every(({ times }) => times === 1)).toBe(true)
    const stored = new Set(rows.map(({ id }) => id))
    expect([...acknowledged].filter((id) => !stored.has(id))).toEqual([])
    expect(acknowledged.size).toBeGreaterThan(kills * 5)

    const { child, address } = await startServer()
    const order = (await (
      await fetch(`${address}/api/orders/${orderId}`, { headers: { cookie } })
    ).json()) as {
      entries: Parameters<typeof verifyChain>[0]
      head: { seq: number }
    }
    child.kill('SIGKILL')
    expect(verifyChain(order.entries)).toEqual({ whole: true })
    expect(order.head.seq).toBe(order.entries.length)
  })
})

describe('killing the server between signed and stored', () => {
  const waiting = `select pid from pg_locks where not granted and relation = 'entries'::regclass
    and database = (select oid from pg_database where datname = current_database())`

  /** Sends something and kills the server while the database holds its entry back; the statement ends with the server. */
  const killAtEntry = (path: string, body: object): Promise<void> =>
    withClient(shop.ownerUrl, (holder) =>
      withClient(shop.url, async (watcher) => {
        const held = async () => (await watcher.query<{ pid: number }>(waiting)).rows
        const { child, address } = await startServer()
        await holder.query('begin; lock table entries in share mode')
        const unheard = post(address, path, body).then(
          () => 'heard',
          () => 'unheard',
        )
        await expect.poll(held).toHaveLength(1)
        child.kill('SIGKILL')
        expect(await unheard).toBe('unheard')
        for (const { pid } of await held()) await watcher.query('select pg_terminate_backend($1)', [pid])
        await expect.poll(held).toHaveLength(0)
        await holder.query('rollback')
      }),
    )

  it('loses nothing and doubles nothing: the report is sealed once when it is asked for again, and the vehicle goes', async () => {
    const { orderId, handBack } = finished
    const reports = `/api/orders/${orderId}/reports`
    const sealing = { entryId: randomUUID() }
    // The file is signed and kept by then, and no entry names it yet.
    await killAtEntry(reports, sealing)

    const { address } = await startServer()
    const sealed = await (await post(address, reports, sealing)).json()
    expect(sealed).toMatchObject({ number: expect.stringMatching(/-R1$/) })
    expect(await (await post(address, reports, sealing)).json()).toEqual(sealed)

    const read = (path: string) => fetch(`${address}${path}`, { headers: { cookie } })
    const { entries } = (await (await read(`/api/orders/${orderId}`)).json()) as {
      entries: Parameters<typeof verifyChain>[0]
    }
    expect(verifyChain(entries)).toEqual({ whole: true })
    const ofKind = (name: string) => entries.filter(({ kind }) => kind === name)
    const file = Buffer.from(await (await read(`${reports}/${sealed.number}`)).arrayBuffer())
    const pdfSha256 = createHash('sha256').update(file).digest('hex')
    expect(ofKind('report.sealed')).toMatchObject([{ payload: { pdfSha256 } }])

    // The cure of this vehicle is not proven yet, so that a second person agrees to the hand-back by PIN, as always.
    const handOver = async ({ draft, sides }: DemoLine) => {
      const reply = await post(address, '/api/entries', { entries: [envelopeOf(draft)], sides })
      return ((await reply.json()) as { results: [object] }).results[0]
    }
    const { id, pin } = people.greta
    const asked = { staffId: id, pin, agreesTo: agreementOf(handBack.draft) }
    const proof = (await (await post(address, '/api/second-person', asked)).json()) as { token: string }
    const agreed = { ...handBack, draft: withProof(handBack.draft, proof.token) }
    expect(await handOver(agreed)).toMatchObject({ result: 'accepted' })
  })
})
