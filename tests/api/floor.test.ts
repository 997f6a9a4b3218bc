import { fold } from '@bayledger/ledger/fold'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

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
      expect(row.moves).toEqual(nextMoves(state, shop.clock.now().toISOString()))
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

  it('can be asked for one place', async () => {
    const [home, other] = shop.demo.locations
    expect(await rows(`?locationId=${home?.id}`)).toHaveLength(3)
    expect(await rows(`?locationId=${other?.id}`)).toHaveLength(0)
  })
})
