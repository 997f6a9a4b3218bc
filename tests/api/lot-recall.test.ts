import { randomUUID } from 'node:crypto'
import type { RecalledVehicle } from '@bayledger/contract/stock'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { type WriteEntry, writerOn } from '../support/write-entry.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
let orderId: string
let drawnId: string
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const order = freshCopy(shop.demo, 'T-2603')
  orderId = order.orderId
  drawnId = order.lines.find(({ draft }) => draft.kind === 'part.drawn')?.draft.id ?? ''
  await replay.sendUntil(order.lines)
})
afterAll(() => shop.stop())

const once = () => ({ 'idempotency-key': randomUUID() })
const recalled = async (lot: string, caller = desk) =>
  (await caller.get(`/api/stock/recall?lot=${encodeURIComponent(lot)}`).expect(200)).body
const onlyVehicle = async (lot: string, caller = desk): Promise<RecalledVehicle> => {
  const { vehicles } = await recalled(lot, caller)
  expect(vehicles).toHaveLength(1)
  return vehicles[0]
}

describe('a lot that is called back', () => {
  it.each(['K7714', 'k7714', ' K7714 ', 'K7714\u00a0'])(
    'is found as “%s”: blanks at its ends and case make no other lot',
    async (lot) => {
      const { owner, parts } = await onlyVehicle(lot)
      expect(owner).toMatchObject({ mayCall: true, phone: expect.any(String) })
      expect(parts).toMatchObject([
        {
          orderId,
          wheel: 'LF',
          partNumber: 'TS-315-C',
          lot: 'K7714',
          sensorId: '1FC40B27',
          heardLast: { wheel: 'LF', onThisVehicle: true },
        },
      ])
    },
  )

  it('is found by the lot of a kit as well, with the sensor that the kit was fitted with', async () => {
    const items = (await desk.get('/api/stock/items').expect(200)).body.records
    const kit = items.find(
      ({ content }: { content: { partNumber: string } }) => content.partNumber === 'TK-C',
    )
    // The demo has 22; one was fitted.
    expect(kit.facts.onHand).toBe(21)
    const received = { kind: 'received', quantity: 4, cores: 0, lot: 'C118-4', words: null }
    await desk.post(`/api/stock/items/${kit.id}/changes`, received, once()).expect(201)
    const { vehicles, shelves } = await recalled(' c118-4 ')
    expect(vehicles).toHaveLength(1)
    expect(vehicles[0]).toMatchObject({ vehicleId: (await onlyVehicle('K7714')).vehicleId })
    expect(vehicles[0].parts).toMatchObject([
      { orderId, isKit: true, wheel: 'LF', partNumber: 'TK-C', lot: 'C118-4', sensorId: '1FC40B27' },
    ])
    expect(shelves).toEqual([{ locationId: shop.demo.home.id, partNumber: 'TK-C', came: 4, left: 1 }])
  })

  it('says what of it came to a shelf and left it', async () => {
    const { shelves } = await recalled('K7714')
    expect(shelves).toEqual([{ locationId: shop.demo.home.id, partNumber: 'TS-315-C', came: 3, left: 1 }])
  })

  it('tells a technician which vehicle, not how to reach its owner', async () => {
    for (const where of ['desk', 'bay'] as const) {
      const { owner } = await onlyVehicle('K7714', await replay.as('rufus', where))
      expect(owner.name).not.toBe('')
      expect(owner).not.toHaveProperty('phone')
      expect(owner).not.toHaveProperty('email')
    }
  })

  it('is found under the vehicle’s owner of today, with what they agreed to today', async () => {
    const { vehicleId, owner } = await onlyVehicle('K7714')
    const {
      version,
      customerId: _id,
      ...content
    } = (await desk.get(`/api/customers/${owner.customerId}`).expect(200)).body
    await desk
      .put(
        `/api/customers/${owner.customerId}`,
        { ...content, mayCall: false },
        { 'if-match': `"${version}"` },
      )
      .expect(200)
    expect(await onlyVehicle('K7714')).toMatchObject({ vehicleId, owner: { mayCall: false } })
  })

  it('is not at a vehicle whose part was withdrawn', async () => {
    const ines = await replay.as('ines', 'bay')
    const write: WriteEntry = writerOn(shop, orderId)
    const struck = { entryId: drawnId, reason: 'undone', words: null, secondPerson: null } as const
    expect(await write(ines, 'entry.struck', struck)).toMatchObject({ result: 'accepted' })
    const { vehicles, shelves } = await recalled('K7714')
    expect(vehicles).toEqual([])
    expect(shelves).toMatchObject([{ came: 3, left: 0 }])
  })

  it('that nobody ever wrote down is nowhere', async () => {
    expect(await recalled('NEVER-1')).toEqual({ vehicles: [], shelves: [] })
    expect((await desk.get('/api/stock/recall?lot=%20').expect(422)).body.fields[0].field).toBe('lot')
  })

  it('is searched through an index of its own, however many entries there are', async () => {
    const client = await shop.deps.pool.connect()
    await client.query('begin')
    await client.query('set local enable_seqscan = off')
    const plan = async (kind: string, lot: string) =>
      JSON.stringify(
        await client.query(
          `explain select from entries where shop_id = '${shop.demo.shop.id}' and kind = '${kind}'
             and lot_key(payload ->> '${lot}') = lot_key('K7714')`,
        ),
      )
    const plans = [await plan('part.drawn', 'lot'), await plan('sensor.fitted', 'kitLot')]
    await client.query('rollback')
    client.release()
    expect(plans[0]).toContain('entries__lot')
    expect(plans[1]).toContain('entries__kit_lot')
  })
})
