import { randomUUID } from 'node:crypto'
import { once } from 'node:events'
import { get, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
let port: number
const open: IncomingMessage[] = []
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  shop.server.listen(0, '127.0.0.1')
  await once(shop.server, 'listening')
  port = (shop.server.address() as AddressInfo).port
})
afterAll(async () => {
  for (const stream of open) stream.destroy()
  await shop.stop()
})

/** The stream as a page reads it: text so far, and a wait for the next event that matches. */
const listen = async (caller: Caller) => {
  const request = get({ port, path: '/api/live', headers: { cookie: caller.cookies.join('; ') } })
  const [response] = (await once(request, 'response')) as [IncomingMessage]
  open.push(response)
  let text = ''
  response.on('data', (part: Buffer) => {
    text += part
  })
  return {
    response,
    text: () => text,
    wakes: () => text.split('event: wake').length - 1,
    told: () => [...text.matchAll(/^data: (.*)$/gm)].map(([, data]) => JSON.parse(data ?? '')),
    nextWake: async () => {
      const before = text.split('event: wake').length
      while (text.split('event: wake').length === before) await once(response, 'data')
    },
  }
}

describe('the live stream', () => {
  it('wakes everyone who listens once something is written, and names the order and no more', async () => {
    const first = await listen(desk)
    const tablet = await (await shop.tablet()).signIn('rufus')
    const second = await listen(tablet)
    expect(first.response.headers['content-type']).toBe('text/event-stream; charset=utf-8')
    await Promise.all(
      [first, second].map(async (stream) => (stream.wakes() === 0 ? stream.nextWake() : undefined)),
    )
    const [line] = freshCopy(shop.demo, 'T-2602').lines
    if (!line) throw new Error('an order without a first line')
    const woken = Promise.all([first.nextWake(), second.nextWake()])
    await replay.send(line)
    await woken
    const all = { all: true, orders: [], tray: true }
    const moved = { all: false, orders: [{ orderId: line.draft.orderId, seq: 1 }], tray: false }
    for (const stream of [first, second]) {
      expect(stream.text()).toMatch(/^retry: 2000\nid: \d+\nevent: wake\ndata: /)
      expect(stream.told()).toEqual([all, moved])
    }
  })

  it('is not opened by a tablet on which nobody is signed in', async () => {
    expect((await (await shop.tablet()).get('/api/live').expect(401)).body.code).toBe('SESSION_MISSING')
  })

  it('ends the oldest of a session that opens more than six', async () => {
    const advisor = await shop.desk('devin')
    const first = await listen(advisor)
    const ended = once(first.response, 'close')
    const others = []
    for (let opened = 0; opened < 6; opened += 1) others.push(await listen(advisor))
    await ended
    const woken = Promise.all(others.map((stream) => stream.nextWake()))
    await shop.writeElsewhere()
    await woken
    for (const stream of others) expect(stream.response.complete).toBe(false)
  })

  it('wakes for what another process wrote', async () => {
    const stream = await listen(desk)
    if (stream.wakes() === 0) await stream.nextWake()
    const woken = stream.nextWake()
    await shop.writeElsewhere()
    await woken
  })

  it('finds out by looking when a wake-up was lost', async () => {
    const stream = await listen(desk)
    if (stream.wakes() === 0) await stream.nextWake()
    const woken = stream.nextWake()
    // Past the hub: as if the process had died between its commit and its NOTIFY.
    await shop.deps.pool.query(
      `insert into refused_entries (shop_id, id, order_id, kind, body, code, "values", received_at, written_by)
       values ($1, $2, $2, 'note.added', '{}', 'ORDER_ENDED', '{}', '2027-01-01', '{}')`,
      [shop.deps.shopId, randomUUID()],
    )
    await woken
  })

  it('names an order whose message was lost, once', async () => {
    const stream = await listen(desk)
    if (stream.wakes() === 0) await stream.nextWake()
    const order = freshCopy(shop.demo, 'T-2603')
    const woken = stream.nextWake()
    // A process that died between its commit and its message: the head moved, and nothing said so.
    await replay.sendUntil(order.lines.slice(0, 1))
    await woken
    await shop.deps.pool.query(
      "update order_heads set seq = seq + 1, updated_at = updated_at + interval '1 second' where order_id = $1",
      [order.orderId],
    )
    await stream.nextWake()
    expect(stream.told().slice(1)).toEqual([
      { all: false, orders: [{ orderId: order.orderId, seq: 1 }], tray: false },
      { all: false, orders: [{ orderId: order.orderId, seq: 2 }], tray: false },
    ])
  })

  it('ends with its session, and with no other', async () => {
    const [staying, going] = [await shop.desk('devin'), await shop.desk('devin')]
    const [kept, ended] = [await listen(staying), await listen(going)]
    const isOver = once(ended.response, 'end')
    await going.delete('/api/sessions/current').expect(204)
    await isOver
    const woken = kept.nextWake()
    await shop.writeElsewhere()
    await woken
    expect(kept.response.complete).toBe(false)
  })

  it('is not open to a stranger', async () => {
    const { body } = await shop.nobody.get('/api/live').expect(401)
    expect(body.code).toBe('SESSION_MISSING')
  })
})

describe('health', () => {
  it('says that the process answers and that the database does', async () => {
    expect((await shop.nobody.get('/healthz').expect(200)).body).toEqual({ status: 'alive' })
    expect((await shop.nobody.get('/readyz').expect(200)).body).toEqual({
      status: 'ready',
      readOnlyOrders: [],
      backups: { state: 'no-key', newestAt: null, keptUpTo: null, onDiskOfData: false },
    })
  })
})
