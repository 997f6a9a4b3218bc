import { randomUUID } from 'node:crypto'
import type { Server } from 'node:http'
import { openPool } from '@bayledger/db/pool'
import { versionOf } from '@bayledger/ledger/registry'
import type { Pool } from 'pg'
import request from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { buildApp } from '../../apps/api/src/app.ts'
import { alter } from '../support/alter.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, type Replay, replayOn } from '../support/replay-order.ts'
import { writeByHand } from '../support/write-by-hand.ts'

/** An order whose chain does not hold is read-only, and says so; the others go on. */
let shop: TestApp
let replay: Replay
let desk: Caller
let pool: Pool
let second: Awaited<ReturnType<typeof buildApp>>
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  // A process of its own on the same database: it has read no order yet.
  pool = openPool({ url: shop.url, size: 2, onIdleError: () => undefined })
  second = await buildApp({
    parts: { ...shop.parts, pool },
    logger: false,
    webFolder: null,
    callsPerMinute: 100_000,
    checksEveryReply: true,
  })
  await second.ready()
})
afterAll(async () => {
  await second.close()
  await pool.end()
  await shop.stop()
})

const elsewhere = (method: 'get' | 'post', path: string, body?: object) => {
  const call = request(second.server as Server)
    [method](path)
    .set('sec-fetch-site', 'same-origin')
    .set('cookie', desk.cookies.join('; '))
  return body ? call.send(body) : call
}

const finished = async () => {
  const order = freshCopy(shop.demo, 'T-2601')
  await replay.sendUntil(order.lines)
  const { number, entries } = (await desk.get(`/api/orders/${order.orderId}`).expect(200)).body
  return { ...order, number, entries }
}
const changeWritten =
  "update entries set written_at = written_at + interval '1 second' where order_id = $1 and seq = $2"
const noteOn = (orderId: string, lines: ReturnType<typeof freshCopy>['lines']) => {
  const line = lines.find(({ draft }) => draft.kind === 'complaint.recorded')
  if (!line) throw new Error('nobody complains')
  return {
    entries: [{ ...envelopeOf(line.draft), id: randomUUID(), orderId }],
    sides: line.sides,
  }
}

describe('an order that was altered outside the program', () => {
  it('is read up to the entry before, takes nothing, and leaves the others alone', async () => {
    const [broken, whole] = [await finished(), await finished()]
    await alter(shop, changeWritten, [broken.orderId, 9])
    const { body } = await elsewhere('get', `/api/orders/${broken.orderId}`).expect(200)
    expect(body.entries).toHaveLength(8)
    expect(body.readOnly).toMatchObject({
      code: 'chain-broken',
      seq: 9,
      words: expect.stringMatching(/^Entry 9 /),
    })
    const sent = await elsewhere('post', '/api/entries', noteOn(broken.orderId, broken.lines)).expect(200)
    expect(sent.body.results).toMatchObject([
      { result: 'not-yet', words: expect.stringMatching(/nothing can be added/) },
    ])
    const refused = await elsewhere('post', `/api/orders/${broken.orderId}/reports`, {
      entryId: randomUUID(),
    })
    expect(refused.status).toBe(423)
    expect(refused.body).toMatchObject({ code: 'ORDER_READ_ONLY', reason: 'chain-broken' })
    expect((await elsewhere('get', '/readyz').expect(200)).body).toEqual({
      status: 'ready',
      readOnlyOrders: [{ orderNumber: broken.number, seq: 9, code: 'chain-broken' }],
      backups: expect.objectContaining({ state: 'no-key' }),
    })
    const good = await elsewhere('get', `/api/orders/${whole.orderId}`).expect(200)
    expect(good.body.readOnly).toBeNull()
    await elsewhere('post', `/api/orders/${whole.orderId}/reports`, { entryId: randomUUID() }).expect(201)
  })

  it('is found before it is sealed, by a process that had read it when it was whole', async () => {
    const order = await finished()
    await alter(shop, changeWritten, [order.orderId, 4])
    const { body } = await desk
      .post(`/api/orders/${order.orderId}/reports`, { entryId: randomUUID() })
      .expect(423)
    expect(body).toMatchObject({ code: 'ORDER_READ_ONLY', reason: 'chain-broken' })
    expect((await desk.get(`/api/orders/${order.orderId}`).expect(200)).body.readOnly.seq).toBe(4)
    const { rows } = await shop.deps.pool.query('select 1 from sealed_reports where order_id = $1', [
      order.orderId,
    ])
    expect(rows).toEqual([])
  })

  it('takes entries again once it was put right', async () => {
    const order = await finished()
    await alter(shop, changeWritten, [order.orderId, 5])
    expect((await elsewhere('get', `/api/orders/${order.orderId}`).expect(200)).body.readOnly.seq).toBe(5)
    await alter(shop, changeWritten.replace('+ interval', '- interval'), [order.orderId, 5])
    expect((await elsewhere('get', `/api/orders/${order.orderId}`).expect(200)).body.readOnly).toBeNull()
    await elsewhere('post', `/api/orders/${order.orderId}/reports`, { entryId: randomUUID() }).expect(201)
  })

  it.each([
    ['names an entry that is not there', 'seq = seq + 1', (last: number) => last + 1],
    ['names an entry before the newest', 'seq = seq - 2', (last: number) => last - 1],
    ['has another hash than the newest entry', "hash = repeat('a', 64)", (last: number) => last],
  ])(
    'takes nothing where its head %s, and takes entries again once that was put right',
    async (_, change, at) => {
      const order = await finished()
      const seq = at(order.entries.length)
      const { rows } = await shop.deps.pool.query('select seq, hash from order_heads where order_id = $1', [
        order.orderId,
      ])
      await alter(shop, `update order_heads set ${change} where order_id = $1`, [order.orderId])
      // One process has the order in memory and writes without reading it; the other has never seen it.
      const note = noteOn(order.orderId, order.lines)
      for (const { body } of [
        await desk.post('/api/entries', note).expect(200),
        await elsewhere('post', '/api/entries', note).expect(200),
      ])
        expect(body.results).toMatchObject([
          {
            result: 'not-yet',
            words: expect.stringMatching(new RegExp(`^Entry ${seq} .*nothing can be added`)),
          },
        ])
      const read = (await elsewhere('get', `/api/orders/${order.orderId}`).expect(200)).body
      expect(read.entries).toEqual(order.entries.slice(0, seq - 1))
      expect(read.readOnly).toMatchObject({ code: 'chain-broken', seq })
      const named = { orderNumber: order.number, seq, code: 'chain-broken' }
      expect((await shop.nobody.get('/readyz').expect(200)).body.readOnlyOrders).toContainEqual(named)
      expect((await elsewhere('get', '/readyz').expect(200)).body.readOnlyOrders).toContainEqual(named)
      await alter(shop, 'update order_heads set seq = $2, hash = $3 where order_id = $1', [
        order.orderId,
        rows[0].seq,
        rows[0].hash,
      ])
      const sent = await desk.post('/api/entries', note).expect(200)
      expect(sent.body.results).toMatchObject([{ result: 'accepted' }])
      const whole = (await elsewhere('get', `/api/orders/${order.orderId}`).expect(200)).body
      expect(whole.readOnly).toBeNull()
      expect(whole.entries.slice(0, order.entries.length)).toEqual(order.entries)
    },
  )

  it('that is altered from its first entry on cannot be shown, and says why', async () => {
    const order = await finished()
    await alter(shop, changeWritten, [order.orderId, 1])
    const { body } = await elsewhere('get', `/api/orders/${order.orderId}`).expect(423)
    expect(body.code).toBe('ORDER_READ_ONLY')
  })
})

describe('an order with an entry that a newer program wrote', () => {
  it.each([
    ['kind', 'roof.rack.fitted', 1],
    ['version', 'complaint.recorded', versionOf('complaint.recorded') + 1],
  ])('of a %s that this one does not know is read up to it and takes nothing', async (_, kind, version) => {
    const order = await finished()
    const seq = order.entries.length + 1
    await writeByHand(shop, order.entries.at(-1), { id: randomUUID(), kind, version, payload: {} })
    const note = noteOn(order.orderId, order.lines)
    // One process has the order in memory and writes without reading it; the other has never seen it.
    for (const { body } of [
      await desk.post('/api/entries', note).expect(200),
      await elsewhere('post', '/api/entries', note).expect(200),
    ])
      expect(body.results).toMatchObject([
        {
          result: 'not-yet',
          words: expect.stringMatching(/newer version of the program.*Update the server/),
        },
      ])
    const { body } = await desk.get(`/api/orders/${order.orderId}`).expect(200)
    expect(body.entries).toEqual(order.entries)
    expect(body.readOnly).toMatchObject({ code: 'newer-than-this-program', seq })
    const refused = await desk.post(`/api/orders/${order.orderId}/reports`, { entryId: randomUUID() })
    expect(refused.status).toBe(423)
    expect(refused.body).toMatchObject({ code: 'ORDER_READ_ONLY', reason: 'newer-than-this-program' })
    expect((await elsewhere('get', '/readyz').expect(200)).body.readOnlyOrders).toContainEqual({
      orderNumber: order.number,
      seq,
      code: 'newer-than-this-program',
    })
  })
})
