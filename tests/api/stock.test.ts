import { randomUUID } from 'node:crypto'
import type { StockItem } from '@bayledger/contract/stock'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let desk: Caller
let owner: Caller
let elsewhere: string
beforeAll(async () => {
  shop = await startTestApp()
  desk = await shop.desk('ottoline')
  owner = await shop.desk('marguerite')
  elsewhere = shop.demo.locations.find(({ id }) => id !== shop.demo.home.id)?.id ?? ''
})
afterAll(() => shop.stop())

const once = (key: string = randomUUID()) => ({ 'idempotency-key': key })
const list = async (): Promise<StockItem[]> => (await desk.get('/api/stock/items').expect(200)).body.records
const transfers = async () => (await desk.get('/api/stock/transfers').expect(200)).body.transfers
const lineOf = async (partNumber: string, locationId = shop.demo.home.id): Promise<StockItem> => {
  const found = (await list()).find(
    ({ content }) => content.partNumber === partNumber && content.locationId === locationId,
  )
  if (!found) throw new Error(`no line ${partNumber}`)
  return found
}
const change = (item: StockItem, body: object, key = once()) =>
  desk.post(`/api/stock/items/${item.id}/changes`, body, key)
const received = { kind: 'received', quantity: 10, lot: null, cores: 0, words: null }
const content = {
  kind: 'sensor',
  words: 'Sensor 433.92 MHz, clamp-in, swivel',
  frequenciesMHz: [433.92],
  stem: 'clamp-in',
  holeMillimeters: 11.3,
  protocols: ['P-433'],
  ratedPsi: 87,
  nutLbfIn: 62,
  screwLbfIn: 12,
  madeMonth: '2025-11',
  shelfMonths: 18,
  heldBack: null,
  minimum: 4,
  leadDays: 2,
  coreDepositCents: 500,
  supplier: 'Sensor wholesale by telephone',
}
const add = (change: object, caller = owner) =>
  caller.post(
    '/api/stock/items',
    { content: { ...content, locationId: shop.demo.home.id, ...change } },
    once(),
  )
const created = async (partNumber: string): Promise<StockItem> => (await add({ partNumber }).expect(201)).body

describe('a part on the stock list', () => {
  it('is put there with all that matching needs, none on hand, once at a place however its number is written', async () => {
    const item = await created('TS-NEW-1')
    expect(item).toMatchObject({ content, version: 1, facts: { onHand: 0, suggestedMinimum: 0 } })
    const refused = await add({ partNumber: ' ts-new-1 ' }).expect(422)
    expect(refused.body.fields).toMatchObject([{ field: 'content.partNumber', found: 'ts-new-1' }])
  })

  it('is what the bay and the ledger know of it from then on', async () => {
    const bay = await (await shop.tablet()).signIn('rufus')
    const { parts } = (await bay.get('/api/stock').expect(200)).body
    expect(parts.find(({ partNumber }: { partNumber: string }) => partNumber === 'TS-NEW-1')).toMatchObject({
      protocols: ['P-433'],
      holeMillimeters: 11.3,
      ratedPsi: 87,
      shelfMonths: 18,
    })
  })

  it('refuses a nut’s torque of a wheel, a place that is not ours, and a list of three frequencies', async () => {
    const wrong = { partNumber: 'TS-NEW-2', nutLbfIn: 1_200, frequenciesMHz: [315, 433.92, 2_400] }
    const reply = await add(wrong).expect(422)
    expect(reply.body.fields.map(({ field }: { field: string }) => field)).toEqual([
      'content.frequenciesMHz',
      'content.nutLbfIn',
    ])
    expect(reply.body.fields[1].allowed).toContain('a figure in lbf·ft belongs to a wheel')
    const place = await add({ partNumber: 'TS-NEW-2', locationId: randomUUID() }).expect(422)
    expect(place.body.fields[0].field).toBe('content.locationId')
  })

  it('hands back both versions where two owners edit it', async () => {
    const item = await created('TS-NEW-3')
    const path = `/api/stock/items/${item.id}`
    const put = (change: object, version: number, caller = owner) =>
      caller.put(path, { content: { ...item.content, ...change } }, { 'if-match': `"${version}"` })
    const saved = await put({ minimum: 6 }, 1).expect(200)
    expect(saved.body).toMatchObject({ version: 2, content: { minimum: 6 } })
    const stale = await put({ minimum: 9 }, 1).expect(412)
    expect(stale.body).toMatchObject({
      code: 'VERSION_STALE',
      current: { version: 2, content: { minimum: 6 } },
      sent: { minimum: 9 },
    })
    expect((await put({}, 2, desk).expect(403)).body.code).toBe('ACCESS_REFUSED')
    const renamed = await put({ partNumber: 'TS-OTHER' }, 2).expect(422)
    expect(renamed.body.fields[0].allowed).toContain('TS-NEW-3: it stays as it is')
    const { history } = (await desk.get(path).expect(200)).body
    expect(history.map(({ version, by }: { version: number; by: string }) => [version, by])).toEqual([
      [2, 'Marguerite Ashby-Bell'],
      [1, 'Marguerite Ashby-Bell'],
    ])
  })

  it('says how many to keep, from the use of 90 days', async () => {
    expect(await lineOf('TS-315-C')).toMatchObject({ facts: { drawnIn90Days: 0, suggestedMinimum: null } })
  })
})

describe('stock that moves without an order', () => {
  it('is received once for one key, with its lot, trimmed, and who and when', async () => {
    const item = await created('TS-MOVE-1')
    const key = once()
    const delivery = { ...received, lot: 'Q-77 ', cores: 2, words: 'Slip 4471' }
    await change(item, delivery, key).expect(201)
    const { body } = await change(item, delivery, key).expect(201)
    expect(body.facts).toMatchObject({ onHand: 10, coresOwed: 2, lots: ['Q-77'] })
    const { changes } = (await desk.get(`/api/stock/items/${item.id}/changes`).expect(200)).body
    expect(changes).toEqual([
      {
        at: shop.clock.now().toISOString(),
        kind: 'received',
        quantity: 10,
        cores: 2,
        lot: 'Q-77',
        words: 'Slip 4471',
        by: 'Ottoline Pask',
        orderId: null,
        orderNumber: null,
      },
    ])
  })

  it('is counted against what the list said, and not where the list moved meanwhile', async () => {
    const item = await created('TS-MOVE-2')
    await change(item, received).expect(201)
    const late = await change(item, { kind: 'counted', found: 9, listed: 0, words: null }).expect(409)
    expect(late.body.detail).toContain('said 0 when you counted and says 10 now')
    const counted = { kind: 'counted', found: 8, listed: 10, words: 'Two behind the shelf' }
    expect((await change(item, counted).expect(201)).body.facts.onHand).toBe(8)
    const same = { kind: 'counted', found: 8, listed: 8, words: null }
    expect((await change(item, same).expect(201)).body.facts.onHand).toBe(8)
  })

  it('is never sent or scrapped where it is not', async () => {
    const item = await created('TS-MOVE-3')
    for (const body of [
      { kind: 'sent', quantity: 1, lot: null, toLocationId: elsewhere },
      { kind: 'scrapped', quantity: 1, lot: null, words: 'Crushed' },
    ])
      expect((await change(item, body).expect(409)).body.detail).toContain('0 are on the list here')
    const here = { kind: 'sent', quantity: 1, lot: null, toLocationId: shop.demo.home.id }
    await change(item, received).expect(201)
    expect((await change(item, here).expect(409)).body.detail).toContain('at this place already')
  })

  it('is on its way between two places until it arrives, and what is missing is explained', async () => {
    const item = await created('TS-MOVE-4')
    await change(item, received).expect(201)
    const sent = { kind: 'sent', quantity: 4, lot: 'Q-78', toLocationId: elsewhere }
    expect((await change(item, sent).expect(201)).body.facts.onHand).toBe(6)
    expect(await lineOf('TS-MOVE-4', elsewhere)).toMatchObject({
      content: { minimum: null },
      facts: { onHand: 0, onTheWay: 4 },
    })
    const [{ transferId }] = await transfers()
    const arrive = (body: object) => desk.post(`/api/stock/transfers/${transferId}/arrival`, body, once())
    const explained = async (body: object) => (await arrive(body).expect(409)).body.detail
    expect(await explained({ quantity: 5, words: null })).toContain('4 were sent')
    expect(await explained({ quantity: 3, words: null })).toContain('what became of the rest')
    expect((await arrive({ quantity: 3, words: 'One fell' }).expect(201)).body.facts).toMatchObject({
      onHand: 3,
      onTheWay: 0,
      lots: ['Q-78'],
    })
    expect(await explained({ quantity: 3, words: 'One fell' })).toContain('recorded already')
    expect(await transfers()).toEqual([])
  })

  it('arrives once where two people record it at the same time', async () => {
    const item = await created('TS-MOVE-5')
    await change(item, received).expect(201)
    await change(item, { kind: 'sent', quantity: 2, lot: null, toLocationId: elsewhere }).expect(201)
    const [{ transferId }] = await transfers()
    const replies = await Promise.all(
      [1, 2, 3].map(() =>
        desk.post(`/api/stock/transfers/${transferId}/arrival`, { quantity: 2, words: null }, once()),
      ),
    )
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 409, 409])
    expect((await lineOf('TS-MOVE-5', elsewhere)).facts.onHand).toBe(2)
  })

  it('counts the cores that go back, never more than are owed', async () => {
    const item = await created('TS-MOVE-6')
    await change(item, { ...received, cores: 3 }).expect(201)
    const back = (cores: number) => change(item, { kind: 'core-returned', cores, words: null })
    expect((await back(2).expect(201)).body.facts.coresOwed).toBe(1)
    expect((await back(2).expect(409)).body.detail).toContain('1 cores are owed')
  })

  it('is not moved by a technician, nor from a tablet', async () => {
    const item = await lineOf('TS-315-C')
    const technician = await shop.desk('rufus')
    const bay = await (await shop.tablet()).signIn('greta')
    for (const caller of [technician, bay])
      await caller.post(`/api/stock/items/${item.id}/changes`, received, once()).expect(403)
  })

  it('is on hand as often as its movements say, whatever happened above', async () => {
    const { rows } = await shop.deps.pool.query(
      `select part_number from stock_items s where on_hand <> (
         select coalesce(sum(quantity), 0) from (
           select quantity from stock_movements where stock_item_id = s.id
           union all select quantity from stock_changes where stock_item_id = s.id) moved)`,
    )
    expect(rows).toEqual([])
  })
})
