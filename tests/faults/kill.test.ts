import { type ChildProcess, spawn } from 'node:child_process'
import { randomBytes, randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { createInterface } from 'node:readline'
import { openPool } from '@bayledger/db/pool'
import { sideDigest } from '@bayledger/ledger/digests'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

/** The service is killed in mid-write, five times; what it had acknowledged is there each time. */
const kills = 5
const writers = 6

let shop: TestApp
let orderId: string
let cookie: string
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  await replay.sendUntil(order.lines, ({ draft }) => draft.kind === 'wheel.checked')
  // The killed processes run on the real clock, and so must the session.
  shop.clock.set(new Date().toISOString())
  cookie = (await shop.desk('ottoline')).cookies.join('; ')
})
afterAll(() => shop.stop())

type Running = { readonly child: ChildProcess; readonly address: string }

const startServer = async (): Promise<Running> => {
  const child = spawn(process.execPath, ['tests/faults/support/serve.ts', shop.url], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  if (!child.stdout) throw new Error('no output to read the address from')
  const [address] = (await once(createInterface({ input: child.stdout }), 'line')) as [string]
  return { child, address }
}

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

const send = async (address: string, body: ReturnType<typeof note>): Promise<string> => {
  const reply = await fetch(`${address}/api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin', cookie },
    body: JSON.stringify(body),
  })
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
