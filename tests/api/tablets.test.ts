import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const version = (number: number) => ({ 'if-match': `"${number}"` })
const read = async (id: string) => (await owner.get(`/api/tablets/${id}`).expect(200)).body
const put = (id: string, content: object, of: number) =>
  owner.put(`/api/tablets/${id}`, { content }, version(of))

describe('the tablets of a shop', () => {
  it('are listed with place and when each was last seen, for owner and manager only', async () => {
    const tablet = await shop.tablet()
    expect((await read(tablet.deviceId)).record.facts).toEqual({
      enrolledAt: '2026-01-12T16:40:00.000Z',
      lastSeenAt: null,
      heldOrders: 0,
      refusedEntries: 0,
      unsent: null,
    })
    await tablet.signIn('ines')
    const { record } = await read(tablet.deviceId)
    expect(record.content).toEqual({ name: 'Bay 9', locationId: shop.demo.home.id, isOut: false })
    expect(record.facts.lastSeenAt).toBe('2026-01-12T16:40:00.000Z')
    expect((await (await shop.desk('ottoline')).get('/api/tablets').expect(403)).body.code).toBe(
      'ACCESS_REFUSED',
    )
  })

  it('say at each contact what waits on them, and their page says when that was', async () => {
    const tablet = await shop.tablet()
    const path = '/api/devices/current/unsent'
    await tablet.put(path, { entries: 3, photos: 1 }).expect(204)
    const toldAt = shop.clock.now().toISOString()
    const unsent = async () => (await read(tablet.deviceId)).record.facts.unsent
    expect(await unsent()).toEqual({ entries: 3, photos: 1, toldAt })
    shop.clock.advance(60_000)
    await tablet.put(path, { entries: 0, photos: 0 }).expect(204)
    expect(await unsent()).toEqual({ entries: 0, photos: 0, toldAt: shop.clock.now().toISOString() })
    expect((await tablet.put(path, { entries: -1, photos: 0 })).status).toBe(422)
    expect((await owner.put(path, { entries: 1, photos: 0 })).body.code).toBe('DEVICE_UNKNOWN')
    const { record } = await read(tablet.deviceId)
    expect(record.version).toBe(1)
    await put(tablet.deviceId, { ...record.content, isOut: true }, 1).expect(200)
    expect((await tablet.put(path, { entries: 9, photos: 0 })).body.code).toBe('DEVICE_UNKNOWN')
    expect(await unsent()).toMatchObject({ entries: 0 })
  })

  it('are renamed and moved, and the next call of the tablet knows it', async () => {
    const tablet = await shop.tablet()
    const other = shop.demo.locations.find(({ id }) => id !== shop.demo.home.id)
    await put(tablet.deviceId, { name: 'Cart 2', locationId: other?.id, isOut: false }, 1).expect(200)
    const { body } = await tablet.get('/api/devices/current').expect(200)
    expect(body).toMatchObject({ name: 'Cart 2', location: { locationId: other?.id } })
    const { history } = await read(tablet.deviceId)
    expect(history.map(({ by, content }: Record<string, unknown>) => [by, content])).toEqual([
      ['Marguerite Ashby-Bell', { name: 'Cart 2', locationId: other?.id, isOut: false }],
      [null, { name: 'Bay 9', locationId: shop.demo.home.id, isOut: false }],
    ])
  })

  it('are put out at once, sessions and all, and stay out', async () => {
    const tablet = await shop.tablet()
    const ines = await tablet.signIn('ines')
    await ines.get('/api/floor').expect(200)
    const { content } = (await read(tablet.deviceId)).record
    await put(tablet.deviceId, { ...content, isOut: true }, 1).expect(200)
    expect((await ines.get('/api/floor')).status).toBe(401)
    expect((await tablet.get('/api/devices/current').expect(401)).body.code).toBe('DEVICE_UNKNOWN')
    const back = await put(tablet.deviceId, content, 2).expect(422)
    expect(back.body.fields[0]).toMatchObject({ field: 'content.isOut', found: 'false' })
  })

  it('name what cannot be, and hand back both versions after a lost race', async () => {
    const tablet = await shop.tablet()
    const elsewhere = { name: ' ', locationId: randomUUID(), isOut: false }
    expect((await put(tablet.deviceId, elsewhere, 1).expect(422)).body.fields[0].field).toBe('content.name')
    const nowhere = await put(tablet.deviceId, { ...elsewhere, name: 'Cart' }, 1).expect(422)
    expect(nowhere.body.fields[0].field).toBe('content.locationId')
    const at = { name: 'Cart 5', locationId: shop.demo.home.id, isOut: false }
    await put(tablet.deviceId, at, 1).expect(200)
    const lost = await put(tablet.deviceId, { ...at, name: 'Cart 6' }, 1).expect(412)
    expect([lost.body.current.content.name, lost.body.sent.name]).toEqual(['Cart 5', 'Cart 6'])
    expect((await put(randomUUID(), at, 1).expect(404)).body.code).toBe('RECORD_NOT_FOUND')
  })
})
