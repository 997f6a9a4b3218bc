import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { cornerTire } from '../support/first-shop.ts'

/** In the order of a shop's first minutes: a database without a shop, then the shop, then afterwards. */
let service: TestApp
beforeAll(async () => {
  service = await startTestApp('migrated')
})
afterAll(() => service.stop())

const path = '/api/first-shop'

/** A call that reaches the service from an address, under a name, with what a program in between may add. */
const callFrom = (remoteAddress: string, host: string, added: Record<string, string> = {}) =>
  service.inject({
    method: 'POST',
    url: path,
    remoteAddress,
    headers: { host, 'sec-fetch-site': 'same-origin', ...added },
    payload: cornerTire,
  })

describe('the first page of an empty database', () => {
  it('begins with the first prices and hours of the trade', async () => {
    const { body } = await service.nobody.get(path).expect(200)
    expect(body).toMatchObject({ state: 'open', prices: { laborCentsPerHour: 13_000 } })
    expect(body.hours).toHaveLength(7)
  })

  it.each([
    ['another machine', '192.168.1.20', 'localhost:4310', {}],
    ['another machine that speaks IPv6', 'fe80::20', 'localhost:4310', {}],
    ['another machine that says it is this one', '10.0.0.9', 'localhost', { 'x-forwarded-for': '127.0.0.1' }],
    ['a program in between on this machine', '127.0.0.1', 'localhost', { 'x-forwarded-for': '127.0.0.1' }],
    [
      'such a program that says so in the newer way',
      '127.0.0.1',
      'localhost',
      { forwarded: 'for=127.0.0.1' },
    ],
    ['a name of somebody else that points here', '127.0.0.1', 'shop.example:4310', {}],
  ])('is refused in plain words to %s, and nothing is made', async (_from, address, host, added) => {
    const reply = await callFrom(address, host, added)
    expect(reply.statusCode).toBe(403)
    expect(reply.json()).toMatchObject({ code: 'FIRST_PAGE_ELSEWHERE' })
    expect(reply.json().detail).toMatch(/http:\/\/localhost:.*on the machine itself.*Nothing was made/)
    expect(await service.parts.prisma.shop.count()).toBe(0)
  })

  it.each([
    ['a PIN that is guessed at once', { pin: '123456' }, 'PIN_UNSUITABLE'],
    ['a short password', { password: 'corner' }, 'PASSWORD_UNSUITABLE'],
    ['a password that many people take', { password: 'Welcome12345!' }, 'PASSWORD_UNSUITABLE'],
  ])('does not take %s', async (_what, change, code) => {
    const { body } = await service.nobody
      .post(path, { ...cornerTire, owner: { ...cornerTire.owner, ...change } })
      .expect(422)
    expect(body.code).toBe(code)
    expect(await service.parts.prisma.shop.count()).toBe(0)
  })

  it('names every field that is wrong', async () => {
    const { body } = await service.nobody
      .post(path, { ...cornerTire, timeZone: 'Nowhere', altitudeFeet: 99_000, shopName: '' })
      .expect(422)
    expect(body.fields.map(({ field }: { field: string }) => field).sort()).toEqual([
      'altitudeFeet',
      'shopName',
      'timeZone',
    ])
  })

  it('is won by one of two who open it at once; the other hears so', async () => {
    const replies = await Promise.all([
      service.nobody.post(path, cornerTire),
      service.nobody.post(path, { ...cornerTire, shopName: 'Another Tire' }),
    ])
    expect(replies.map(({ status }) => status).sort()).toEqual([201, 409])
    const lost = replies.find(({ status }) => status === 409)
    expect(lost?.body).toMatchObject({ code: 'SHOP_MADE_BEFORE' })
    expect(lost?.body.detail).toMatch(/before you did.*Sign in/)
    expect(await service.parts.prisma.shop.count()).toBe(1)
    const { signInName: name, password } = cornerTire.owner
    const signedIn = await service.nobody.post('/api/sessions/desk', { name, password }).expect(201)
    expect(signedIn.body.staff).toMatchObject({ name: 'A. Owner', roles: ['owner'] })
    const owner = service.withCookies(cookiesIn(signedIn))
    const { body } = await owner.get('/api/settings').expect(200)
    const prices = body.settings.find(({ kind }: { kind: string }) => kind === 'prices').body
    expect(prices).toMatchObject({ laborCentsPerHour: 11_000, taxRatePercentThousandths: 5_500 })
    expect(body.locations).toMatchObject([{ name: 'Corner Street', altitudeFeet: 820 }])
    const { body: places } = await owner.get('/api/places').expect(200)
    expect(places.records[0].content.hours).toEqual(cornerTire.hours)
    const { body: list } = await owner.get('/api/checklist').expect(200)
    expect(list).toEqual({
      people: { working: 1, bay: 0 },
      instruments: { wrenches: 0, gauges: 0 },
      pricesVersion: 1,
      tablets: 0,
      backups: { state: 'no-key', newestAt: null, keptUpTo: null, onDiskOfData: false },
      hasOrders: false,
    })
  })

  it('is gone afterwards, and says that the shop is made', async () => {
    expect((await service.nobody.get(path).expect(200)).body).toEqual({ state: 'made' })
    expect((await service.nobody.post(path, cornerTire).expect(409)).body.code).toBe('SHOP_MADE_BEFORE')
    const elsewhere = await service.inject({ url: path, remoteAddress: '192.168.1.20' })
    expect(elsewhere.json()).toEqual({ state: 'made' })
  })
})
