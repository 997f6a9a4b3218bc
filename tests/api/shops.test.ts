import { contract } from '@bayledger/contract/contract'
import { addressOf } from '@bayledger/contract/endpoint'
import { v7 as newId } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { seedBase } from '../../prisma/seeds/base.ts'
import { people } from '../../prisma/seeds/demo/people.ts'
import { firstHours } from '../../prisma/seeds/first-settings.ts'
import { type Caller, cookiesIn, type Method, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { sheetContent } from '../support/sheet-content.ts'

/** One database with the demo shop and an empty one beside it. */
let shop: TestApp
let orderId: string
let linkId: string
let demoOwner: Caller
let other: { readonly shopId: string; readonly owner: Caller }

beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
  const desk = await replay.as('ottoline', 'desk')
  linkId = (await desk.post(`/api/orders/${orderId}/links`).expect(201)).body.linkId
  demoOwner = await shop.desk('marguerite')
  const made = await seedBase({
    prisma: shop.parts.prisma,
    now: shop.clock.now().toISOString(),
    shop: {
      name: 'Second Street Tire',
      placeName: 'Second Street',
      altitudeFeet: 40,
      timeZone: 'America/New_York',
      hours: firstHours,
    },
    owner: { name: 'A. Second', signInName: 'second', password: 'a second street', pin: '418203' },
    hashPassword: shop.hashPassword,
    besideOthers: true,
  })
  if (!made.made) throw new Error('the second shop was not made')
  const signedIn = await shop.nobody
    .post('/api/sessions/desk', { shopId: made.shopId, name: 'second', password: 'a second street' })
    .expect(201)
  other = { shopId: made.shopId, owner: shop.withCookies(cookiesIn(signedIn)) }
})
afterAll(() => shop.stop())

describe('signing in where one service has several shops', () => {
  const { signInName: name, password } = people.ottoline

  it('lists the shops by name', async () => {
    const { body } = await shop.nobody.get('/api/shops').expect(200)
    expect(body.shops.map((one: { name: string }) => one.name)).toEqual([
      'Second Street Tire',
      shop.demo.shop.name,
    ])
  })

  it('needs the shop, and says so', async () => {
    const { body } = await shop.nobody.post('/api/sessions/desk', { name, password }).expect(422)
    expect(body).toMatchObject({ code: 'FIELDS_INVALID', fields: [{ field: 'shopId', found: 'nothing' }] })
    expect(body.detail).toContain('Choose the shop')
  })

  it('knows a person in their own shop only', async () => {
    await shop.nobody.post('/api/sessions/desk', { shopId: shop.demo.shop.id, name, password }).expect(201)
    await shop.nobody.post('/api/sessions/desk', { shopId: other.shopId, name, password }).expect(401)
    await shop.nobody.post('/api/sessions/desk', { shopId: newId(), name, password }).expect(422)
  })
})

describe('a shop beside another', () => {
  it('finds nothing of the other shop on any route that names something', async () => {
    const vehicle = shop.demo.vehicles[0]
    const ids: Record<string, string> = {
      orderId,
      linkId,
      number: `${shop.demo.orders[0]?.number}-R1`,
      customerId: shop.demo.customers[0]?.id ?? '',
      vehicleId: vehicle?.id ?? '',
      sheetId: shop.demo.sheets[0]?.sheetId ?? '',
      entryId: newId(),
      transferId: newId(),
      draftId: newId(),
      watch: newId(),
      messageId: newId(),
      sessionId: newId(),
      passkeyId: newId(),
      mergeId: await mergeOfDemo(),
      holdId: await holdOfDemo(),
      digest: '0'.repeat(64),
      piece: '0',
    }
    const named = contract.filter(
      ({ path, access }) => path.includes(':') && access.who !== 'public' && access.who !== 'customer-link',
    )
    expect(named.length).toBeGreaterThan(10)
    const { body: own } = await other.owner.get('/api/settings').expect(200)
    const ownPlace = { locationId: own.locations[0].locationId }
    for (const endpoint of named) {
      const record = endpoint.path.includes('/:id') ? await recordAt(endpoint.path) : null
      ids.id = record?.id ?? ''
      const missing = [...endpoint.path.matchAll(/:([a-zA-Z]+)/g)].filter(([, key]) => !ids[key ?? ''])
      expect(missing, endpoint.path).toEqual([])
      const reply = await other.owner
        .call(
          endpoint.method.toLowerCase() as Method,
          addressOf(endpoint.path, ids, 'query' in endpoint ? queryFor(endpoint.path) : {}),
          {
            'if-match': '"1"',
            'idempotency-key': newId(),
            ...('bodyIs' in endpoint ? { 'content-type': endpoint.bodyIs } : {}),
          },
        )
        .send(
          endpoint.method === 'GET' || endpoint.method === 'DELETE'
            ? undefined
            : endpoint.path.endsWith('/:id') && record
              ? { content: { ...record.content, ...('locationId' in record.content ? ownPlace : {}) } }
              : bodyFor(endpoint.operationId),
        )
      expect(reply.status, `${endpoint.method} ${endpoint.path}`).toBe(refusedWith(endpoint.operationId))
    }
  })

  it("keeps a draft under the id of another shop's order, and none under that of its own", async () => {
    const path = `/api/write-up-drafts/${orderId}`
    const draftsOf = async (owner: Caller) =>
      (await owner.get('/api/write-up-drafts').expect(200)).body.drafts.map(
        ({ draftId }: { draftId: string }) => draftId,
      )
    // An order has its draft's id: what a desk sends of it after it was opened is late.
    await demoOwner.put(path, { body: { form: {} } }).expect(204)
    expect(await draftsOf(demoOwner)).not.toContain(orderId)
    await other.owner.put(path, { body: { form: {} } }).expect(204)
    expect(await draftsOf(other.owner)).toContain(orderId)
    await other.owner.delete(path).expect(204)
  })

  it('lists nothing of the other shop', async () => {
    for (const path of [
      '/api/floor',
      '/api/customers',
      '/api/sheets',
      '/api/instruments',
      '/api/refused-entries',
    ]) {
      const { body } = await other.owner.get(path).expect(200)
      const lists = Object.values(body).filter((value) => Array.isArray(value))
      expect(lists, path).toEqual([[]])
    }
    const { body: found } = await other.owner.get(`/api/search?q=${shop.demo.vehicles[0]?.plate}`).expect(200)
    expect(found.hits).toEqual([])
    const { body: staff } = await other.owner.get('/api/staff').expect(200)
    expect(staff.staff.map(({ name }: { name: string }) => name)).toEqual(['A. Second'])
  })

  it("cannot write to the other shop's order, nor open one for its vehicle", async () => {
    const note = {
      id: newId(),
      orderId,
      kind: 'order.assigned',
      version: 1,
      payload: { staffId: null, bay: 1 },
      writtenAt: shop.clock.now().toISOString(),
      restsOn: [],
    }
    const { body } = await other.owner.post('/api/entries', { entries: [note], sides: [] }).expect(200)
    expect(body.results).toMatchObject([{ code: 'ORDER_NOT_OPENED' }])
  })

  it('gets a tablet of its own by a code of its own', async () => {
    const place = (await other.owner.get('/api/settings').expect(200)).body.locations[0].locationId
    const { body } = await other.owner.post('/api/enrollment-codes', { locationId: place }).expect(201)
    const enrolled = await shop.nobody.post('/api/devices', { code: body.code, name: 'Bay 1' }).expect(201)
    const tablet = shop.withCookies(cookiesIn(enrolled))
    expect((await tablet.get('/api/staff').expect(200)).body.staff).toHaveLength(1)
    await other.owner.post('/api/enrollment-codes', { locationId: shop.demo.home.id }).expect(422)
  })
})

/** What a read needs to be looked at at all. */
const queryFor = (path: string) => (path.endsWith('/torqued-wheels') ? { since: '2026-01-12' } : { after: 0 })

/** What is answered otherwise than by 404, and why that finds nothing of the other shop either. */
const answeredWith: Readonly<Record<string, number>> = {
  // A transfer that a shop has not is one that cannot arrive.
  receiveTransfer: 409,
  // A draft has its id from the desk: it is a new one here.
  putWriteUpDraft: 204,
  deleteWriteUpDraft: 204,
  // Of an import that is not this shop's there is no progress.
  getImportProgress: 200,
  // A message that a shop has not is one that no longer waits.
  withdrawMessage: 409,
}
const refusedWith = (operationId: string): number => answeredWith[operationId] ?? 404

/** Two customers of the other shop whose records were made one. */
const mergeOfDemo = async (): Promise<string> => {
  const [one, two] = shop.demo.customers.slice(-2)
  const { body } = await demoOwner
    .call('post', `/api/customers/${one?.id}/merges`, { 'if-match': '"1"', 'idempotency-key': newId() })
    .send({ mergedId: two?.id, mergedVersion: 1, take: [] })
    .expect(201)
  return body.mergeId
}

/** A legal hold of the other shop. */
const holdOfDemo = async (): Promise<string> => {
  const hold = { subject: 'customer', subjectId: shop.demo.customers[0]?.id, reason: 'A claim' }
  return (await demoOwner.post('/api/holds', hold).expect(201)).body.holdId
}

/** A record of the other shop, as a page of its owner reads it. */
const recordAt = async (path: string): Promise<{ id: string; content: object }> => {
  const { body } = await demoOwner.get(path.replace(/\/:id.*$/, '')).expect(200)
  return body.records[0]
}

/** What a write needs to be looked at at all. */
const bodyFor = (operationId: string): object => {
  switch (operationId) {
    case 'putCustomer':
      return {
        name: 'A. Name',
        phone: null,
        email: null,
        mayText: false,
        mayEmail: false,
        mayCall: false,
        language: 'en',
      }
    case 'erasePerson':
      return { reason: 'asked', identity: 'in-person' }
    case 'enterFigure':
      return { entered: { figure: 'no-sensors', system: 'none' } }
    case 'verifyFigure':
      return { figure: 'studTorque', staffId: people.bo.id, token: 'a'.repeat(43) }
    case 'changeStock':
      return { kind: 'scrapped', quantity: 1, lot: null, words: 'bent' }
    case 'receiveTransfer':
      return { quantity: 1, words: null }
    case 'setPin':
      return { pin: '730164', present: null }
    case 'setPassword':
      return { password: 'a second street', present: null }
    case 'putVehicle':
      return {
        customerId: shop.demo.customers[0]?.id,
        plate: null,
        plateRegion: null,
        vin: null,
        description: 'A vehicle',
        color: null,
        notes: null,
        sheetId: null,
      }
    case 'createSheetVersion': {
      const [sheet] = shop.demo.sheets
      return sheet ? sheetContent(sheet) : {}
    }
    case 'putPhotoPiece':
      return Buffer.from('a piece')
    case 'sendMessage':
      return { entryId: newId(), purpose: 'report', channel: 'email', inQuietHours: true }
    case 'sendNewTime':
      return { entryId: newId(), promisedAt: '2026-01-12T22:00:00.000Z', channel: 'email' }
    case 'mergeCustomers':
    case 'mergeVehicles':
      return { mergedId: newId(), mergedVersion: 1, take: [] }
    case 'putMessageChoice':
      return { purpose: 'job', channel: 'email', allowed: false }
    case 'putWriteUpDraft':
      return { body: {} }
    case 'sealOrderReport':
      return { entryId: newId() }
    default:
      return {}
  }
}
