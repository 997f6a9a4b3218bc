import { fold } from '@bayledger/ledger/fold'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { english } from '@bayledger/wording/en/english'
import { moveWords } from '@bayledger/wording/moves'
import { v7 as newId } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { envelopeOf, type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  for (const number of ['T-2602', 'T-2603', 'T-2613'])
    await replay.sendUntil(freshCopy(shop.demo, number).lines)
})
afterAll(() => shop.stop())

const rows = async (query = '') => (await desk.get(`/api/floor${query}`).expect(200)).body.rows

describe('the floor list', () => {
  it('shows of each order what its ledger folds to', async () => {
    for (const row of await rows()) {
      const { body: order } = await desk.get(`/api/orders/${row.orderId}`).expect(200)
      const state = fold(order.entries)
      expect(row).toMatchObject({
        seq: order.head.seq,
        number: order.number,
        customerName: order.customer.name,
        vehicleDescription: order.vehicle.description,
        promisedAt: state.opened?.promisedAt,
        assignedTo: state.assigned?.staffId ?? null,
        isOpen: true,
        sealed: false,
      })
      expect(row.moves).toEqual(
        nextMoves(state, shop.clock.now().toISOString()).map((move) => ({
          ...move,
          words: moveWords(english.moves, move),
        })),
      )
    }
    expect(await rows()).toHaveLength(3)
  })

  it('moves on when a named wait has run out, though nothing is written', async () => {
    const waiting = (await rows()).find(
      ({ moves }: { moves: { mover: string }[] }) => moves[0]?.mover === 'waiting-until',
    )
    const start = shop.clock.now().toISOString()
    shop.clock.set(waiting.moves[0].until)
    const again = await shop.desk('devin')
    const { body } = await again.get('/api/floor').expect(200)
    const moved = body.rows.find(({ orderId }: { orderId: string }) => orderId === waiting.orderId)
    expect(moved.moves[0].mover).not.toBe('waiting-until')
    expect(moved.seq).toBe(waiting.seq)
    shop.clock.set(start)
  })

  it('can be read for one place', async () => {
    const [home, other] = shop.demo.locations
    expect(await rows(`?locationId=${home?.id}`)).toHaveLength(3)
    expect(await rows(`?locationId=${other?.id}`)).toHaveLength(0)
  })

  it('gives the rows of named orders on one page', async () => {
    const [one, , three] = await rows()
    expect(await rows(`?orders=${one.orderId},${three.orderId}`)).toEqual([one, three])
    expect(await rows(`?orders=${shop.demo.home.id}`)).toEqual([])
    const { body } = await desk.get('/api/floor?orders=some').expect(422)
    expect(body.fields).toMatchObject([{ field: 'orders' }])
  })

  it('reaches every open order by following next, each once', async () => {
    const opened = freshCopy(shop.demo, 'T-2602').lines[0]
    if (!opened) throw new Error('an order without a first line')
    const entries = Array.from({ length: 120 }, () => ({
      ...envelopeOf(opened.draft),
      id: newId(),
      orderId: newId(),
    }))
    for (let at = 0; at < entries.length; at += 20)
      await desk.post('/api/entries', { entries: entries.slice(at, at + 20), sides: [] }).expect(200)
    const seen: string[] = []
    let cursor = ''
    do {
      const { body } = await desk.get(`/api/floor?${cursor}`).expect(200)
      expect(body.rows.length).toBeLessThanOrEqual(100)
      seen.push(...body.rows.map(({ orderId }: { orderId: string }) => orderId))
      cursor = body.next === null ? '' : `cursor=${encodeURIComponent(body.next)}`
    } while (cursor !== '')
    expect(new Set(seen).size).toBe(seen.length)
    expect(new Set(seen)).toEqual(new Set([...seen, ...entries.map(({ orderId }) => orderId)]))
    expect(seen).toHaveLength(123)
  })
})
