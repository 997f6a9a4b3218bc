import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  desk = await shop.desk('ottoline')
})
afterAll(() => shop.stop())

const content = {
  name: 'H. Quillfeather-Ames',
  phone: '+1 555 555 0199',
  email: 'h.quillfeather@example.com',
  mayText: true,
  mayEmail: false,
  mayCall: true,
  language: 'en',
}
const once = (key: string = randomUUID()) => ({ 'idempotency-key': key })
const version = (number: number) => ({ 'if-match': `"${number}"` })

describe('adding a customer', () => {
  it('happens once for one key, and answers the repeat as the first time', async () => {
    const key = once()
    const first = await desk.post('/api/customers', content, key).expect(201)
    const second = await desk.post('/api/customers', content, key).expect(201)
    expect(second.body).toEqual(first.body)
    expect(first.headers.etag).toBe('"1"')
  })

  it('happens once when ten copies come at once', async () => {
    const key = once()
    const replies = await Promise.all(
      Array.from({ length: 10 }, () =>
        desk.post('/api/customers', { ...content, name: 'T. Wellborne' }, key),
      ),
    )
    expect(new Set(replies.map(({ body }) => body.customerId)).size).toBe(1)
    const { body } = await desk.get('/api/customers?q=wellborne').expect(200)
    expect(body.customers).toHaveLength(1)
  })

  it('needs a key, and refuses one that came with other content', async () => {
    expect((await desk.post('/api/customers', content).expect(428)).body.code).toBe('IDEMPOTENCY_KEY_MISSING')
    const key = once()
    await desk.post('/api/customers', content, key).expect(201)
    const other = await desk.post('/api/customers', { ...content, name: 'Other' }, key).expect(422)
    expect(other.body.code).toBe('IDEMPOTENCY_KEY_REUSED')
  })

  it('names every wrong field at once, with what is allowed', async () => {
    const reply = await desk
      .post('/api/customers', { ...content, name: ' ', phone: 'call me', nickname: 'H' }, once())
      .expect(422)
    expect(reply.body.code).toBe('FIELDS_INVALID')
    expect(reply.body.fields.map(({ field }: { field: string }) => field).toSorted()).toEqual([
      'name',
      'nickname',
      'phone',
    ])
    const allowed = reply.body.fields.find(({ field }: { field: string }) => field === 'phone')?.allowed
    expect(allowed).toBe('7 to 24 digits, spaces, points and the signs + ( ) -')
    expect(reply.headers['content-type']).toBe('application/problem+json; charset=utf-8')
  })
})

describe('saving a customer', () => {
  it('needs the version that was read', async () => {
    const { body } = await desk.post('/api/customers', content, once()).expect(201)
    const path = `/api/customers/${body.customerId}`
    expect((await desk.put(path, content).expect(428)).body.code).toBe('VERSION_MISSING')
    expect((await desk.put(path, content, { 'if-match': '*' }).expect(422)).body.fields[0].field).toBe(
      'If-Match',
    )
  })

  it('hands back both versions when someone was first', async () => {
    const { body: made } = await desk.post('/api/customers', content, once()).expect(201)
    const path = `/api/customers/${made.customerId}`
    const saved = await desk.put(path, { ...content, phone: '+1 555 555 0111' }, version(1)).expect(200)
    expect(saved.body.version).toBe(2)
    const stale = await desk.put(path, { ...content, phone: '+1 555 555 0122' }, version(1)).expect(412)
    expect(stale.body).toMatchObject({
      code: 'VERSION_STALE',
      current: { version: 2, phone: '+1 555 555 0111' },
      sent: { phone: '+1 555 555 0122' },
    })
  })

  it('lets one of ten win', async () => {
    const { body: made } = await desk.post('/api/customers', content, once()).expect(201)
    const replies = await Promise.all(
      Array.from({ length: 10 }, (_, index) =>
        desk.put(`/api/customers/${made.customerId}`, { ...content, name: `Name ${index}` }, version(1)),
      ),
    )
    expect(replies.filter(({ status }) => status === 200)).toHaveLength(1)
    expect(replies.filter(({ status }) => status === 412)).toHaveLength(9)
  })

  it('is not open to a tablet', async () => {
    const bay = await (await shop.tablet()).signIn('rufus')
    const [first] = (await desk.get('/api/customers').expect(200)).body.customers
    const path = `/api/customers/${first.customerId}`
    const replies = [
      await bay.get('/api/customers').expect(403),
      await bay.get(path).expect(403),
      await bay.put(path, content, version(1)).expect(403),
    ]
    expect(replies.map(({ body }) => body.code)).toEqual(Array(3).fill('ACCESS_REFUSED'))
  })

  it('finds no customer where there is none', async () => {
    const path = `/api/customers/${randomUUID()}`
    expect((await desk.get(path).expect(404)).body.code).toBe('CUSTOMER_NOT_FOUND')
    expect((await desk.put(path, content, version(1)).expect(404)).body.code).toBe('CUSTOMER_NOT_FOUND')
  })
})

describe('the list of customers', () => {
  it('goes on where the page before ended, each customer once', async () => {
    for (let number = 0; number < 60; number += 1)
      await desk
        .post('/api/customers', { ...content, name: `Pager ${String(number).padStart(2, '0')}` }, once())
        .expect(201)
    const first = await desk.get('/api/customers').expect(200)
    expect(first.body.customers).toHaveLength(50)
    const second = await desk.get(`/api/customers?cursor=${first.body.next}`).expect(200)
    expect(second.body.next).toBeNull()
    const all: { name: string; customerId: string }[] = [...first.body.customers, ...second.body.customers]
    expect(all.filter(({ name }) => name.startsWith('Pager'))).toHaveLength(60)
    expect(new Set(all.map(({ customerId }) => customerId)).size).toBe(all.length)
    const found = await desk.get('/api/customers?q=pager').expect(200)
    expect(found.body.customers).toHaveLength(20)
    expect(found.body.next).toBeNull()
  })

  it('refuses a cursor that is not ours', async () => {
    expect((await desk.get('/api/customers?cursor=abc').expect(422)).body.fields[0].field).toBe('cursor')
  })

  it('takes the signs of a pattern as themselves', async () => {
    expect((await desk.get('/api/customers?q=%25').expect(200)).body.customers).toEqual([])
  })
})
