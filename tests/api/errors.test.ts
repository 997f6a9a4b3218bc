import { randomUUID } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { type ErrorCode, errorCodes, errorStatuses } from '@bayledger/contract/errors'
import { english } from '@bayledger/wording/en/english'
import type { Response } from 'supertest'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { alter } from '../support/alter.ts'
import { type Caller, cookiesIn, startTestApp, type TestApp, type TestTablet } from '../support/app.ts'
import { cornerTire } from '../support/first-shop.ts'
import { writeFirstVersionConsent } from '../support/first-version-entry.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { impatient, listenAgain, sendRaw } from '../support/impatient-app.ts'
import { attachedPhoto } from '../support/pictures.ts'
import { replayOn } from '../support/replay-order.ts'
import { makeTabletKey, signedParcel } from '../support/tablet-key.ts'
import { writerOn } from '../support/write-entry.ts'

let shop: TestApp
let desk: Caller
let tablet: TestTablet
let orderId: string
let phone: Caller
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  owner = await shop.desk('marguerite')
  tablet = await shop.tablet()
  const order = freshCopy(shop.demo, 'T-2602')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
  const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
  const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
  phone = shop.withCookies(cookiesIn(opened))
})
afterAll(() => shop.stop())

const once = (key = randomUUID()) => ({ 'idempotency-key': key })
const customer = {
  name: 'A. Name',
  phone: null,
  email: null,
  mayText: false,
  mayEmail: false,
  mayCall: false,
  language: 'en',
}
const someEntry = () => ({
  id: randomUUID(),
  orderId,
  kind: 'note.added',
  version: 1,
  payload: {},
  writtenAt: '2026-01-12T16:40:00.000Z',
  restsOn: [],
})
const person = (extra: object) => ({
  name: 'A. Name',
  signInName: 'name',
  roles: ['advisor'],
  active: true,
  ...extra,
})
const setOf = async (whose: 'bo' | 'marguerite', secret: 'pin' | 'password', body: object) =>
  (await shop.desk('marguerite')).put(`/api/people/${people[whose].id}/${secret}`, body, {
    'if-match': '"1"',
  })
const madeCustomer = async () => (await desk.post('/api/customers', customer, once()).expect(201)).body
const mergeCustomers = (into: string, mergedId: string) =>
  desk.post(`/api/customers/${into}/merges`, { mergedId, mergedVersion: 1, take: [] }, { 'if-match': '"1"' })
const vehicle = (customerId: string, extra: object = {}) => ({
  customerId,
  plate: null,
  plateRegion: null,
  vin: null,
  description: 'A vehicle',
  color: null,
  notes: null,
  sheetId: null,
  ...extra,
})
/** Attaches a photo of some bytes and sends others as its one piece. */
const sendPiece = async (attached: string, sent: string) => {
  const photo = attachedPhoto(Buffer.from(attached))
  await writerOn(shop, orderId)(desk, 'photo.attached', photo)
  return tablet
    .call('put', `/api/photos/${photo.digest}/pieces/0`, { 'content-type': 'application/octet-stream' })
    .send(Buffer.from(sent))
}
/** Imports the shop's own sheets with one row of them spoiled; `null`: with the digest of the preview. */
const importSheets = async (digest: string | null) => {
  const send = (path: string, file: string) =>
    owner
      .call('post', path, { 'content-type': 'application/octet-stream', ...once() })
      .send(Buffer.from(file))
  const { text } = await owner.get('/api/sheets.csv').expect(200)
  const file = text.replace(',direct,', ',sideways,')
  const shown = (await send('/api/sheets/import/preview', file).expect(200)).body.digest
  return send(`/api/sheets/import?digest=${digest ?? shown}&refused=stop`, file)
}
type Answer = Pick<Response, 'status' | 'body' | 'text'>

const firstOf = async (
  times: number,
  call: () => PromiseLike<Response>,
  isWanted: (reply: Response) => boolean,
) => {
  for (let tries = 0; tries < times; tries += 1) if (isWanted(await call())) return
}

/** What is answered to these bytes, by a service that waits a moment only. */
const fromRaw = async (text: string): Promise<Answer> => {
  const { port, stop } = await listenAgain(shop, impatient, { hosts: ['localhost'] })
  const reply = await sendRaw(port, text).closed
  await stop(0)
  const [head = '', body = ''] = reply.split('\r\n\r\n')
  return { status: Number(head.split(' ')[1]), body: JSON.parse(body), text: body }
}

/** A request for each code that answers with it. The two faults of our own come last: they break the shop. */
const producers: Record<ErrorCode, () => PromiseLike<Answer>> = {
  REQUEST_UNREADABLE: () =>
    desk.call('post', '/api/customers', { 'content-type': 'application/json' }).send('{"name":'),
  ADDRESS_UNREADABLE: () => desk.get('/api/orders/%ff'),
  ADDRESS_TOO_LONG: () => desk.get(`/api/orders/${'a'.repeat(101)}`),
  HEADERS_TOO_LARGE: () => fromRaw(`GET /healthz HTTP/1.1\r\nx: ${'h'.repeat(20_000)}\r\n\r\n`),
  REQUEST_TOO_SLOW: () => fromRaw('GET /healthz HTTP/1.1\r\nhost: localhost\r\n'),
  HOST_UNKNOWN: () =>
    fromRaw('GET /api/shops HTTP/1.1\r\nhost: elsewhere.example\r\nconnection: close\r\n\r\n'),
  REQUEST_TOO_LARGE: () => desk.post('/api/customers', { ...customer, name: 'x'.repeat(1_100_000) }, once()),
  REQUEST_NOT_JSON: () => desk.call('post', '/api/customers', { 'content-type': 'text/plain' }).send('hello'),
  REQUEST_COMPRESSED: () =>
    desk.call('post', '/api/customers', { 'content-encoding': 'gzip' }).send({ name: 'not packed at all' }),
  FIELDS_INVALID: () => desk.post('/api/customers', {}, once()),
  ROUTE_NOT_FOUND: () => desk.get('/api/nothing-here'),
  TOO_MANY_REQUESTS: async () => {
    const check = () => shop.nobody.post('/api/report-checks', { sha256: '0'.repeat(64) })
    await firstOf(40, check, ({ status }) => status === 429)
    return check()
  },
  REQUEST_FROM_ELSEWHERE: () =>
    desk.call('post', '/api/customers', { 'sec-fetch-site': 'cross-site' }).send(customer),
  SESSION_MISSING: () => shop.nobody.get('/api/floor'),
  SESSION_EXPIRED: async () => {
    const other = await shop.desk('devin')
    await other.delete('/api/sessions/current').expect(204)
    return other.get('/api/floor')
  },
  SIGN_IN_REFUSED: () => shop.nobody.post('/api/sessions/desk', { name: 'nobody', password: 'x' }),
  PIN_REFUSED: () => tablet.post('/api/sessions/bay', { staffId: people.bo.id, pin: '000000' }),
  SIGN_IN_BLOCKED: async () => {
    const guess = () => tablet.post('/api/sessions/bay', { staffId: people.ines.id, pin: '000000' })
    await firstOf(5, guess, () => false)
    return guess()
  },
  SECOND_PERSON_REFUSED: () =>
    desk.post('/api/second-person', {
      staffId: people.ottoline.id,
      pin: people.ottoline.pin,
      agreesTo: {
        orderId: people.bo.id,
        entryId: people.ines.id,
        kind: 'entry.struck',
        digest: '0'.repeat(64),
      },
    }),
  DEVICE_UNKNOWN: () => shop.nobody.get('/api/devices/current'),
  DEVICE_KEY_TAKEN: async () =>
    (await tablet.signIn('greta')).post('/api/devices/current/key', {
      publicKey: makeTabletKey().publicKey,
    }),
  SEALED_PARCEL_NOT_TAKEN: () => shop.nobody.post('/api/sealed-parcels', { box: 'A'.repeat(200) }),
  SEALED_PHOTO_NOT_TAKEN: () =>
    shop.nobody.post('/api/sealed-photos', { box: 'A'.repeat(200), bytes: 'AAAA' }),
  SIGNATURE_REFUSED: () =>
    tablet.post('/api/bay/parcels', {
      ...signedParcel(makeTabletKey(), tablet.deviceId, { staffId: people.bo.id, entries: [someEntry()] }),
    }),
  ENROLLMENT_CODE_REFUSED: () => shop.nobody.post('/api/devices', { code: 'ABCD-2345', name: 'Bay' }),
  ACCESS_REFUSED: async () => (await tablet.signIn('greta')).post('/api/customers', customer, once()),
  SECOND_STEP_REFUSED: () => desk.post('/api/own-second-step/confirmation', { code: '000000' }),
  SECOND_STEP_NEEDED: async () => {
    await shop.deps.pool.query(
      "insert into second_steps (shop_id, staff_id, secret_box, begun_at, confirmed_at) values ($1, $2, 'x', now(), now())",
      [shop.deps.shopId, people.rufus.id],
    )
    const { signInName: name, password } = people.rufus
    return shop.nobody.post('/api/sessions/desk', { name, password })
  },
  OWNER_CODE_REFUSED: () =>
    shop.nobody.post('/api/sessions/desk/owner-code', {
      ...{ name: 'nobody', code: 'ABCD', password: 'brindle falls again' },
    }),
  PASSKEY_REFUSED: () =>
    shop.nobody.call('post', '/api/sessions/desk/passkey', { host: 'localhost:4310' }).send({
      passkey: { id: 'A', response: { clientDataJSON: 'A', authenticatorData: 'A', signature: 'A' } },
    }),
  SIGN_IN_UNFINISHED: async () => {
    const unfinished = await shop.desk('greta')
    const awaiting = "update sessions set awaits = 'password' where staff_id = $1 and kind = 'desk'"
    await shop.deps.pool.query(awaiting, [people.greta.id])
    return unfinished.get('/api/floor')
  },
  PASSKEY_NEEDS_NAME: () => shop.nobody.post('/api/sessions/desk/passkey/challenge', {}),
  PROOF_NEEDED: async () => {
    const old = "update sessions set proven_at = proven_at - interval '11 minutes' where staff_id = $1"
    await shop.deps.pool.query(old, [people.ottoline.id])
    return desk.post('/api/enrollment-codes', { locationId: shop.demo.home.id })
  },
  FIGURE_VERIFIED: async () => {
    const [{ sheetId, version, studs }] = (await desk.get('/api/sheets').expect(200)).body.sheets
    const entered = { figure: 'studTorque', studs, kind: 'maker-manual', reference: 'page 4' }
    const headers = { ...once(), 'if-match': `"${version}"` }
    return desk.post(`/api/sheets/${sheetId}/figures`, { entered, sure: ['studs.torque.value'] }, headers)
  },
  CSV_UNREADABLE: async () =>
    owner
      .call('post', '/api/sheets/import/preview', { 'content-type': 'application/octet-stream' })
      .send(Buffer.from('vehicle\n')),
  CSV_PREVIEW_STALE: async () => importSheets('0'.repeat(64)),
  CSV_ROWS_REFUSED: async () => importSheets(null),
  FIRST_PAGE_ELSEWHERE: () =>
    shop.nobody.call('post', '/api/first-shop', { 'x-forwarded-for': '127.0.0.1' }).send(cornerTire),
  SHOP_MADE_BEFORE: () => shop.nobody.post('/api/first-shop', cornerTire),
  PIN_UNSUITABLE: () => setOf('bo', 'pin', { pin: '123456', present: null }),
  PASSWORD_UNSUITABLE: () => setOf('bo', 'password', { password: 'short', present: null }),
  PASSWORD_REFUSED: () =>
    setOf('marguerite', 'password', { password: 'brindle falls again', present: 'guessed' }),
  SIGN_IN_NAME_TAKEN: async () =>
    (await shop.desk('marguerite')).post('/api/people', { content: person({ signInName: 'bo' }) }, once()),
  LAST_OWNER: async () =>
    (await shop.desk('marguerite')).put(
      `/api/people/${people.marguerite.id}`,
      { content: person({ signInName: 'marguerite' }) },
      { 'if-match': '"1"' },
    ),
  LINK_REFUSED: () => shop.nobody.post('/api/customer/session', { secret: 'guessed' }),
  CUSTOMER_NOT_FOUND: () => desk.get(`/api/customers/${randomUUID()}`),
  VEHICLE_NOT_FOUND: () => desk.get(`/api/vehicles/${randomUUID()}`),
  SHEET_NOT_FOUND: () => desk.get(`/api/sheets/${randomUUID()}`),
  ORDER_NOT_FOUND: () => desk.get(`/api/orders/${randomUUID()}`),
  ORDER_WITHHELD: async () => {
    const old = freshCopy(shop.demo, 'T-2602')
    const replay = await replayOn(shop)
    await replay.sendUntil(old.lines, ({ draft }) => draft.kind === 'complaint.recorded')
    await writeFirstVersionConsent(shop, desk, old.orderId)
    return (await tablet.signIn('greta')).get(`/api/orders/${old.orderId}`)
  },
  REPORT_NOT_FOUND: () => phone.get('/api/customer/report'),
  PHOTO_NOT_FOUND: () => tablet.get(`/api/photos/${'0'.repeat(64)}`),
  PHOTO_PIECE_WRONG: () => sendPiece('a photo', 'a longer photo'),
  PHOTO_DAMAGED: () => sendPiece('a photo', 'another'),
  PHOTO_UNREADABLE: () => sendPiece('no photo', 'no photo'),
  LINK_NOT_FOUND: () => desk.delete(`/api/orders/${orderId}/links/${randomUUID()}`),
  MESSAGE_NOT_WAITING: () => desk.delete(`/api/orders/${orderId}/messages/${randomUUID()}`),
  MESSAGE_NOT_SENT: () =>
    desk.post(`/api/orders/${orderId}/messages`, {
      ...{ entryId: randomUUID(), purpose: 'estimate', channel: 'email', inQuietHours: false },
    }),
  STOCK_NOT_MOVED: async () => {
    const [item] = (await desk.get('/api/stock/items').expect(200)).body.records
    const counted = { kind: 'counted', found: 1, listed: item.facts.onHand + 1, words: null }
    return desk.post(`/api/stock/items/${item.id}/changes`, counted, once())
  },
  REFUSED_ENTRY_NOT_FOUND: () => desk.post(`/api/refused-entries/${randomUUID()}/settle`),
  RECORD_NOT_FOUND: async () => (await shop.desk('marguerite')).get(`/api/places/${randomUUID()}`),
  VALUE_DOUBTFUL: async () => {
    const owner = await shop.desk('marguerite')
    const { body } = await owner.get('/api/places').expect(200)
    const { content } = body.records[0]
    return owner.post('/api/places', { content: { ...content, altitudeFeet: 14_000 } }, once())
  },
  VERSION_MISSING: async () => desk.put(`/api/customers/${(await madeCustomer()).customerId}`, customer),
  VERSION_STALE: async () =>
    desk.put(`/api/customers/${(await madeCustomer()).customerId}`, customer, { 'if-match': '"7"' }),
  RECORD_MERGED: async () => {
    const [one, other] = [await madeCustomer(), await madeCustomer()]
    await mergeCustomers(one.customerId, other.customerId).expect(201)
    return mergeCustomers(one.customerId, other.customerId)
  },
  MERGE_REFUSED: async () => {
    const { customerId } = await madeCustomer()
    return mergeCustomers(customerId, customerId)
  },
  ERASURE_REFUSED: async () => {
    const { customer: person } = (await desk.get(`/api/orders/${orderId}`).expect(200)).body
    const body = { reason: 'asked', identity: 'in-person' }
    return owner.post(`/api/customers/${person.customerId}/erasure`, body)
  },
  CUSTOMER_ERASED: async () => {
    const { customerId } = await madeCustomer()
    const path = `/api/customers/${customerId}`
    await owner.post(`${path}/erasure`, { reason: 'asked', identity: 'in-person' }).expect(201)
    return desk.put(path, customer, { 'if-match': '"2"' })
  },
  HOLD_NOT_FOUND: () => owner.post(`/api/holds/${randomUUID()}/lift`),
  HOLD_NOT_CHANGED: async () => {
    const { customerId } = await madeCustomer()
    const hold = { subject: 'customer', subjectId: customerId, reason: 'A claim' }
    await owner.post('/api/holds', hold).expect(201)
    return owner.post('/api/holds', hold)
  },
  MERGE_NOT_FOUND: () => desk.post(`/api/merges/${randomUUID()}/undo`),
  IDEMPOTENCY_KEY_MISSING: () => desk.post('/api/customers', customer),
  IDEMPOTENCY_KEY_REUSED: async () => {
    const key = randomUUID()
    await desk.post('/api/customers', customer, once(key)).expect(201)
    return desk.post('/api/customers', { ...customer, name: 'Another' }, once(key))
  },
  VIN_INVALID: async () =>
    desk.post(
      '/api/vehicles',
      vehicle((await madeCustomer()).customerId, { vin: '1M8GDM9A1KP042788' }),
      once(),
    ),
  VIN_TAKEN: async () => {
    const { customerId } = await madeCustomer()
    const send = () => desk.post('/api/vehicles', vehicle(customerId, { vin: '1M8GDM9AXKP042788' }), once())
    await send().expect(201)
    return send()
  },
  ORDER_READ_ONLY: async () => {
    const replay = await replayOn(shop)
    const altered = freshCopy(shop.demo, 'T-2601')
    await replay.sendUntil(altered.lines)
    await alter(shop, "update entries set kind = 'note.added' where order_id = $1 and seq = 3", [
      altered.orderId,
    ])
    return desk.post(`/api/orders/${altered.orderId}/reports`, { entryId: randomUUID() })
  },
  ENTRY_REFUSED: () =>
    phone.post('/api/customer/decisions', {
      entryId: randomUUID(),
      revision: 9,
      digest: '0'.repeat(64),
      shown: '0'.repeat(64),
      answers: [{ bundleKey: 'none', answer: 'declined', deferredUntil: null, cautionsShown: [] }],
      name: 'A. Name',
      relation: 'owner',
      signature: { form: 'typed', text: 'A. Name' },
      agreesToElectronicRecord: true,
      wantsRemovedParts: false,
    }),
  EVIDENCE_INVALID: () => desk.post('/api/diagnoses', { unitz: {} }),
  REPORT_NOT_DUE: () => desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }),
  INTERNAL_FAULT: async () => {
    await shop.deps.pool.query("update instruments set body = '{}' where code = 'GA-1'")
    return desk.get('/api/instruments')
  },
  SERVICE_UNAVAILABLE: async () => {
    await shop.loseDatabase()
    return desk.get('/api/floor')
  },
}

/** The database goes away for good, so that comes last. */
const inOrder = errorCodes.toSorted(
  (one, other) => Number(one === 'SERVICE_UNAVAILABLE') - Number(other === 'SERVICE_UNAVAILABLE'),
)

describe('the list of errors', () => {
  it.each(inOrder)('%s is answered by a request of ours, with its own status and words', async (code) => {
    const { status, body, text } = await await producers[code]()
    expect({ status, code: body.code, title: body.title }, text).toEqual({
      status: errorStatuses[code],
      code,
      title: english.problems[code].title,
    })
    expect(body.detail.length).toBeGreaterThan(15)
    expect(text).not.toMatch(/ at .*\.ts:\d+/)
  })

  it('is documented in docs/errors.md: every code, its status and its title, and no other', () => {
    const documented = [
      ...readFileSync('docs/errors.md', 'utf8').matchAll(/^\| `([A-Z_]+)` \| (\d{3}) \| ([^|]+) \|/gm),
    ].map(([, code, status, title]) => [code, Number(status), title?.trim()])
    expect(documented).toEqual(
      errorCodes.map((code) => [code, errorStatuses[code], english.problems[code].title]),
    )
  })
})
