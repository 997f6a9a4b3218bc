import { randomBytes, randomUUID } from 'node:crypto'
import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import { sideDigest } from '@bayledger/ledger/digests'
import type { Draft } from '@bayledger/ledger/entry'
import { verifyChain } from '@bayledger/ledger/hash-chain'
import type { Pool } from 'pg'
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { type Deps, forShop } from '../../apps/api/src/deps.ts'
import { appendDraft } from '../../apps/api/src/features/entries/service/append-draft.ts'
import { loadLedger } from '../../apps/api/src/features/entries/service/load-ledger.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
/** The same service in another process: its own connections and its own memory, on the same database. */
let otherPool: Pool
let other: Deps
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  otherPool = openPool({ url: shop.url, size: 4, onIdleError: () => undefined })
  other = forShop({ ...shop.parts, pool: otherPool }, shop.demo.shop.id)
})
afterEach(() => vi.restoreAllMocks())
afterAll(async () => {
  await otherPool.end()
  await shop.stop()
})

const openedOrder = async (): Promise<string> => {
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  await replay.sendUntil(lines, ({ draft }) => draft.kind === 'complaint.recorded')
  return orderId
}

const envelope = (orderId: string, kind: string, payload: object, id = randomUUID()) => ({
  id,
  orderId,
  kind,
  version: 1,
  payload,
  writtenAt: shop.clock.now().toISOString(),
  restsOn: [],
})

const noteFor = (orderId: string) => {
  const salt = randomBytes(32)
  const text = 'A note among many.'
  const digest = sideDigest(text, salt)
  return {
    entry: envelope(orderId, 'note.added', { words: digest }),
    sides: [{ digest, salt: salt.toString('base64'), text }],
  }
}

const sendNote = async (orderId: string, from: Caller = desk) => {
  const { entry, sides } = noteFor(orderId)
  const reply = await from.post('/api/entries', { entries: [entry], sides })
  return { status: reply.status, result: reply.body.results?.[0], id: entry.id }
}

const send = async (entry: ReturnType<typeof envelope>, from: Caller = desk) => {
  const { body } = await from.post('/api/entries', { entries: [entry], sides: [] }).expect(200)
  return body.results[0]
}

const noteElsewhere = (orderId: string) => {
  const { entry, sides } = noteFor(orderId)
  const writtenBy = { kind: 'staff', staffId: people.ottoline.id } as const
  const draft = { ...entry, shopId: other.shopId, deviceId: null, writtenBy } as Draft
  return appendDraft(other, draft, {
    sides: sides.map((side) => ({ ...side, side: 'personal', salt: Buffer.from(side.salt, 'base64') })),
  })
}

const sql = (text: string, values: unknown[]) =>
  withClient(shop.ownerUrl, (client) => client.query(text, values))

describe('an append in the usual case', () => {
  it('takes one round trip to the database, session and refused entries included', async () => {
    const orderId = await openedOrder()
    await sendNote(orderId)
    const asked = vi.spyOn(shop.parts.pool, 'query')
    expect((await sendNote(orderId)).result.result).toBe('accepted')
    expect(asked.mock.calls.map(([query]) => (query as unknown as { name: string }).name)).toEqual([
      'append entry personal',
    ])
  })

  it('shares the statement with everyone who waits: 64 writers at one order all get in, in a whole chain', async () => {
    const orderId = await openedOrder()
    await sendNote(orderId)
    const asked = vi.spyOn(shop.parts.pool, 'query')
    const replies = await Promise.all(Array.from({ length: 64 }, () => sendNote(orderId)))
    expect(replies.map(({ result }) => result?.result)).toEqual(Array(64).fill('accepted'))
    expect(asked.mock.calls.length).toBeLessThan(64)
    const { entries } = await loadLedger(shop.deps, orderId)
    expect(verifyChain(entries)).toEqual({ whole: true })
    expect(new Set(replies.map(({ id }) => id))).toEqual(new Set(entries.slice(-64).map(({ id }) => id)))
  })
})

describe('what goes wrong with one entry', () => {
  it('takes no other down that is written at the same moment', async () => {
    const orders = await Promise.all([openedOrder(), openedOrder(), openedOrder()])
    const [first = '', second = '', third = ''] = orders
    const nowhere = envelope(second, 'order.moved', { locationId: randomUUID() })
    const [before, moved, sameOrder, elsewhere] = await Promise.all([
      sendNote(first),
      send(nowhere),
      sendNote(second),
      sendNote(third),
    ])
    expect(moved).toMatchObject({ result: 'refused', code: 'ORDER_PARTS_UNKNOWN' })
    for (const { result } of [before, sameOrder, elsewhere]) expect(result.result).toBe('accepted')
  })

  it('is refused for good only on what was written: a stale end of an order is tried again with what follows it', async () => {
    const orderId = await openedOrder()
    await sendNote(orderId)
    await noteElsewhere(orderId)
    const { sides } = noteFor(orderId)
    const words = sides[0]?.digest
    const ended = envelope(orderId, 'order.withdrawn', { reason: 'customer', words })
    const [end, note] = await Promise.all([
      desk.post('/api/entries', { entries: [ended], sides }).expect(200),
      sendNote(orderId),
    ])
    expect(end.body.results[0].result).toBe('accepted')
    const { entries } = await loadLedger(shop.deps, orderId)
    expect(verifyChain(entries)).toEqual({ whole: true })
    const isIn = entries.some(({ id }) => id === note.id)
    expect(note.result).toMatchObject(
      isIn ? { result: 'accepted' } : { result: 'refused', code: 'ORDER_ENDED', kept: true },
    )
  })
})

describe('several processes on one database', () => {
  it('number one order without gaps when both write to it at once', async () => {
    const orderId = await openedOrder()
    const here = Array.from({ length: 20 }, () => sendNote(orderId))
    const there = Array.from({ length: 20 }, () => noteElsewhere(orderId))
    for (const { result } of await Promise.all(here)) expect(result.result).toBe('accepted')
    for (const appended of await Promise.all(there)) expect(appended.admitted).toBe(true)
    const { entries } = await loadLedger(shop.deps, orderId)
    expect(verifyChain(entries)).toEqual({ whole: true })
    expect(entries.filter(({ kind }) => kind === 'note.added')).toHaveLength(40)
  })

  it('know a head that the other has moved between two appends', async () => {
    const orderId = await openedOrder()
    const before = await sendNote(orderId)
    const between = await noteElsewhere(orderId)
    const after = await sendNote(orderId)
    expect(between).toMatchObject({ admitted: true, entry: { seq: before.result.seq + 1 } })
    expect(after.result).toMatchObject({ result: 'accepted', seq: before.result.seq + 2 })
  })

  it('know a role that was taken away between two appends', async () => {
    const orderId = await openedOrder()
    const moved = () => send(envelope(orderId, 'order.moved', { locationId: shop.demo.home.id }))
    expect((await moved()).result).toBe('accepted')
    const { rows } = await sql('select roles from staff where id = $1', [people.ottoline.id])
    await sql(`update staff set roles = '{technician}' where id = $1`, [people.ottoline.id])
    expect(await moved()).toMatchObject({ result: 'refused', code: 'ROLE_NOT_ALLOWED' })
    await sql('update staff set roles = $2 where id = $1', [people.ottoline.id, rows[0].roles])
    expect((await moved()).result).toBe('accepted')
  })

  it('know a tablet that was revoked between two appends: nothing of it is written', async () => {
    const orderId = await openedOrder()
    const tablet = await shop.tablet()
    const bay = await tablet.signIn('ottoline')
    expect((await sendNote(orderId, bay)).result.result).toBe('accepted')
    await sql('update devices set revoked_at = $2 where id = $1', [tablet.deviceId, shop.clock.now()])
    const turnedAway = await sendNote(orderId, bay)
    expect(turnedAway.status).toBe(401)
    const refusable = envelope(orderId, 'order.moved', { locationId: randomUUID() })
    await bay.post('/api/entries', { entries: [refusable], sides: [] }).expect(401)
    const { rows } = await sql(
      `select id from entries where id = any ($1) union select id from refused_entries where id = any ($1)`,
      [[turnedAway.id, refusable.id]],
    )
    expect(rows).toEqual([])
  })

  it('keep an id refused that was refused in the other', async () => {
    const orderId = await openedOrder()
    await sendNote(orderId)
    const { entry, sides } = noteFor(orderId)
    await sql(
      `insert into refused_entries (shop_id, id, order_id, kind, body, code, "values", received_at, written_by)
       values ($1, $2, $3, 'note.added', '{}', 'ORDER_ENDED', '{}', $4, $5)`,
      [
        shop.demo.shop.id,
        entry.id,
        orderId,
        shop.clock.now(),
        { kind: 'staff', staffId: people.ottoline.id },
      ],
    )
    const { body } = await desk.post('/api/entries', { entries: [entry], sides }).expect(200)
    expect(body.results[0]).toMatchObject({ result: 'refused', code: 'ORDER_ENDED' })
  })

  it('know a session that ended between two appends', async () => {
    const orderId = await openedOrder()
    const leaving = await shop.desk('ottoline')
    expect((await sendNote(orderId, leaving)).result.result).toBe('accepted')
    await sql('update sessions set ended_at = $1', [shop.clock.now()])
    expect((await sendNote(orderId, leaving)).status).toBe(401)
  })
})
