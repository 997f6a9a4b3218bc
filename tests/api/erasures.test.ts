import { randomUUID } from 'node:crypto'
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { OwnDatum } from '@bayledger/contract/own-data'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { findMarks } from '../support/find-marks.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { addMarkedPerson, cardOf, marks, sendLate } from '../support/marked-person.ts'
import { readZip } from '../support/read-zip.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { cutOffAtCommit, rowsOf, unerase } from '../support/rows-of.ts'
import { faultsHere, verifiedHere } from '../support/verified-here.ts'

const asked = { reason: 'asked', identity: 'in-person' }

let shop: TestApp
let replay: Replay
let desk: Caller
let owner: Caller
let customerId: string
let orderId: string
let number: string
let report: string
let photo: string
let othersDraft: string
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  owner = await shop.desk('marguerite')
  ;({ customerId, orderId, photo, othersDraft } = await addMarkedPerson(shop, replay, desk))
  const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
  number = body.number
  report = `/api/orders/${orderId}/reports/${number}-R1`
})
afterAll(() => shop.stop())

const found = () => findMarks(shop.ownerUrl, Object.values(marks))
const preview = async () => (await owner.get(`/api/customers/${customerId}/erasure`).expect(200)).body
const erase = () => owner.post(`/api/customers/${customerId}/erasure`, asked)
const faults = () => faultsHere(shop)

describe('the copy of a person’s data', () => {
  it('is one file: their data as JSON and CSV, the sealed reports and the photos that are shown', async () => {
    const { body } = await owner
      .post(`/api/customers/${customerId}/own-data`)
      .responseType('blob')
      .expect(201)
      .expect('content-type', 'application/zip')
    const files = readZip(body)
    expect([...files.keys()]).toEqual([
      ...['data.json', 'data.csv', `reports/${number}-R1.pdf`, `photos/${number}-1.jpg`],
    ])
    const sealed = await owner.get(report).responseType('blob').expect(200)
    expect(files.get(`reports/${number}-R1.pdf`)?.equals(sealed.body)).toBe(true)
    const shown = await owner.get(`/api/orders/${orderId}/photos/${photo}`).responseType('blob').expect(200)
    expect(files.get(`photos/${number}-1.jpg`)?.equals(shown.body)).toBe(true)

    const { data } = JSON.parse(String(files.get('data.json')))
    const said = data.map(({ what, value }: OwnDatum) => `${what}: ${value}`)
    expect(said).toEqual(
      expect.arrayContaining([
        ...[`name: ${marks.name}`, `plate: ${marks.plate}`, `message: ${marks.email}`],
        'message, how it went: was handed over',
        `message, what the mail server said: taken for ${marks.email}`,
        `sealed report: reports/${number}-R1.pdf`,
        `photo attached: photo photos/${number}-1.jpg`,
        expect.stringMatching(/^photo attached: photo that is not in this copy, SHA-256 [0-9a-f]{64}$/),
        expect.stringMatching(`^write-up that was begun: .*${marks.plate}`),
      ]),
    )
    expect(said.filter((line: string) => line.startsWith('write-up'))).toHaveLength(1)
    expect(String(files.get('data.csv'))).toContain(`taken for ${marks.email}`)
    const { body: events } = await owner.get('/api/security-events?from=2026-01-12&to=2026-01-13').expect(200)
    expect(events.events).toContainEqual(expect.objectContaining({ kind: 'file-exported' }))
  })
})

describe('a person is not erased', () => {
  it('while their data are where nobody looks for them yet: the marks are all over', async () => {
    expect(await faults()).toEqual([])
    expect(await found()).toEqual(
      expect.arrayContaining([
        ...[
          'customers.email',
          'customers.name',
          'customers.phone',
          'idempotency_keys.reply',
          'messages.recipient',
        ],
        ...['messages.server_words', 'personal_texts.text', 'record_merges.before'],
        ...['search_tokens.token', 'vehicles.notes', 'vehicles.plate', 'write_up_drafts.body'],
      ]),
    )
  })

  it('by anybody but an owner who proved lately that it is them', async () => {
    const path = `/api/customers/${customerId}/erasure`
    await desk.get(path).expect(403)
    await desk.post(path, asked).expect(403)
    shop.clock.advance(11 * 60_000)
    expect((await erase().expect(403)).body).toMatchObject({ code: 'PROOF_NEEDED' })
    await owner.post('/api/sessions/current/proof', { password: people.marguerite.password }).expect(204)
    await owner.post(path, { reason: 'asked' }).expect(422)
  })

  it('under a legal hold, nor while a tablet keeps the order, and every reason is said', async () => {
    const hold = { subject: 'order', subjectId: orderId, reason: 'A claim about the left front wheel' }
    const { body: placed } = await owner.post('/api/holds', hold).expect(201)
    expect((await owner.post('/api/holds', hold).expect(409)).body).toMatchObject({
      code: 'HOLD_NOT_CHANGED',
    })
    const bay = await replay.as('greta', 'bay')
    await bay.get(`/api/orders/${orderId}`).expect(200)
    const { body } = await erase().expect(409)
    expect(body.code).toBe('ERASURE_REFUSED')
    expect(body.detail).toContain(`There is a legal hold on order ${number}.`)
    expect(body.detail).toContain(`Bay 9 still keeps order ${number}.`)
    expect((await preview()).obstacles).toMatchObject([
      { why: 'held', order: number, reason: hold.reason },
      { why: 'on-tablet', order: number, tablet: 'Bay 9' },
    ])
    await bay.put('/api/held-orders', { orderIds: [] }).expect(204)
    await desk.post(`/api/holds/${placed.holdId}/lift`).expect(403)
    const { body: lifted } = await owner.post(`/api/holds/${placed.holdId}/lift`).expect(200)
    expect(lifted).toMatchObject({ name: number, liftedBy: 'Marguerite Ashby-Bell' })
    expect((await owner.post(`/api/holds/${placed.holdId}/lift`).expect(409)).body.code).toBe(
      'HOLD_NOT_CHANGED',
    )
    expect((await preview()).obstacles).toEqual([])
  })

  it('with an open order, or a sum that is not settled', async () => {
    const open = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(open.lines)
    const { body: order } = await desk.get(`/api/orders/${open.orderId}`).expect(200)
    const { body } = await owner
      .post(`/api/customers/${order.customer.customerId}/erasure`, asked)
      .expect(409)
    expect(body.detail).toContain(`Order ${order.number} is open.`)
    expect(body.detail).toContain(`Order ${order.number} is not settled.`)
  })

  it('by halves: where the note outside the database cannot be written, everything is as it was', async () => {
    const { goes } = await preview()
    const { digestFolder } = shop.parts.digestPlaces
    const inTheWay = join(digestFolder, shop.demo.shop.id, 'in-the-way')
    const before = await found()
    const places = { ...shop.parts.digestPlaces }
    writeFileSync(inTheWay, '')
    Object.assign(shop.parts.digestPlaces, { digestFolder: inTheWay })
    try {
      await erase().expect(500)
    } finally {
      Object.assign(shop.parts.digestPlaces, places)
      rmSync(inTheWay)
    }
    expect(await found()).toEqual(before)
    expect(await preview()).toMatchObject({ erasedAt: null, goes })
  })
})

describe('an erasure that is broken off', () => {
  it('between its note and its commit leaves the person as they were, and the next start ends it', async () => {
    const { body: made } = await desk
      .post('/api/customers', cardOf('Perpetua Halfgone'), { 'idempotency-key': randomUUID() })
      .expect(201)
    const path = `/api/customers/${made.customerId}/erasure`
    const broken = await cutOffAtCommit(shop, () => owner.post(path, asked))
    expect(broken.status).toBeGreaterThanOrEqual(500)
    expect(await findMarks(shop.ownerUrl, ['Perpetua'])).toContain('customers.name')
    expect((await owner.get(path).expect(200)).body.erasedAt).toBeNull()
    expect(await verifiedHere(shop)).toMatchObject({ faults: [], unerased: 1 })

    await shop.erase()
    expect(await findMarks(shop.ownerUrl, ['Perpetua'])).toEqual([])
    expect(await verifiedHere(shop)).toMatchObject({ faults: [], unerased: 0 })
    const { body } = await owner.get('/api/erasures').expect(200)
    expect(body.erasures).toMatchObject([
      { customerId: made.customerId, by: 'Marguerite Ashby-Bell', ...asked },
    ])
  })
})

describe('a person who was erased', () => {
  let goes: Record<string, number>
  let heads: unknown[]
  beforeAll(async () => {
    const before = await preview()
    goes = before.goes
    expect(before.stays).toMatchObject({ orders: 1, reports: [{ number: `${number}-R1` }] })
    heads = await rowsOf(shop, 'select * from order_heads order by order_id')
    const { body } = await erase().expect(201)
    expect(body).toMatchObject({ erasedAt: shop.clock.now().toISOString(), goes: { cards: 0, words: 0 } })
  })

  it('is in no column of the database', async () => {
    expect(await found()).toEqual([])
    expect(await rowsOf(shop, 'select id from write_up_drafts')).toEqual([{ id: othersDraft }])
  })

  it('left a record which verifies, chain by chain, with its projections as they were', async () => {
    expect(await faults()).toEqual([])
    expect(await rowsOf(shop, 'select * from order_heads order by order_id')).toEqual(heads)
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(body.customer.name).toBe('Erased person')
    expect(body.sides.every(({ side }: { side: string }) => side === 'money')).toBe(true)
    expect(body.sides.length).toBeGreaterThan(0)
  })

  it('is on the list of erasures by number of things, and outside the database', async () => {
    const { body } = await owner.get('/api/erasures').expect(200)
    expect(body.erasures).toMatchObject([
      { customerId, by: 'Marguerite Ashby-Bell', ...asked, counts: goes },
      {},
    ])
    expect(goes).toMatchObject({ cards: 2, drafts: 2, refused: 1, messages: 2, openings: 1, choices: 1 })
    expect(goes.words).toBeGreaterThan(2)
    const names = readdirSync(join(shop.parts.digestPlaces.digestFolder, shop.demo.shop.id))
    const notes = names.filter((name) => name.startsWith('erased-'))
    expect(notes).toContain(`erased-${body.erasures[0].erasureId}.json`)
    expect(notes).toHaveLength(2)
    const { body: events } = await owner.get('/api/security-events?from=2026-01-12&to=2026-01-13').expect(200)
    expect(events.events).toContainEqual(expect.objectContaining({ kind: 'person-erased' }))
  })

  it('still is on the sealed report, which is for an owner alone', async () => {
    expect((await desk.get(report).expect(403)).body.code).toBe('ACCESS_REFUSED')
    await owner.get(report).expect(200)
  })

  it('is not erased twice', async () => {
    await erase().expect(201)
    expect((await owner.get('/api/erasures').expect(200)).body.erasures).toHaveLength(2)
  })

  it('has a note that is missed when it is taken away, and when it is another than the shop’s key signed', async () => {
    const folder = join(shop.parts.digestPlaces.digestFolder, shop.demo.shop.id)
    const { body } = await owner.get('/api/erasures').expect(200)
    const { erasureId } = body.erasures[0]
    const file = join(folder, `erased-${erasureId}.json`)
    const note = readFileSync(file, 'utf8')
    rmSync(file)
    const missing = expect.stringMatching(`^Erasure ${erasureId} of .*: its note is missing`)
    expect(await faults()).toEqual([missing])
    writeFileSync(file, note.replace('asked', 'other'))
    expect(await faults()).toEqual([missing, expect.stringContaining('it is no note of an erasure')])
    writeFileSync(file, note)
    expect(await faults()).toEqual([])
  })

  it('cannot be found, edited, held or made one with another customer', async () => {
    const { body: hits } = await desk.get('/api/search?q=quillmarker').expect(200)
    expect(hits.hits).toEqual([])
    const { body: listed } = await desk.get('/api/customers').expect(200)
    expect(listed.customers.map((one: { name: string }) => one.name)).not.toContain('Erased person')
    const { body: card } = await desk.get(`/api/customers/${customerId}`).expect(200)
    const { customerId: _id, version, ...content } = card
    const match = { 'if-match': `"${version}"` }
    const edit = await desk.put(`/api/customers/${customerId}`, { ...content, name: 'Z.' }, match).expect(409)
    expect(edit.body.code).toBe('CUSTOMER_ERASED')
    const another = shop.demo.customers.find(({ id }) => id !== customerId)
    const merge = { mergedId: another?.id, mergedVersion: 1, take: [] }
    const merged = await desk.post(`/api/customers/${customerId}/merges`, merge, match).expect(409)
    expect(merged.body.code).toBe('CUSTOMER_ERASED')
    const hold = { subject: 'customer', subjectId: customerId, reason: 'A claim' }
    expect((await owner.post('/api/holds', hold).expect(409)).body.code).toBe('CUSTOMER_ERASED')
  })
})

describe('what comes after an erasure', () => {
  it('is erased within the hour, and the sealed report once its years are over', async () => {
    expect(await sendLate({ shop, desk }, orderId)).toBe('refused')
    const { pool } = shop.parts
    const count = async () => (await pool.query('select from refused_entries')).rowCount
    expect(await count()).toBe(1)
    await shop.erase()
    expect(await count()).toBe(0)
    await owner.get(report).expect(200)
    shop.clock.advance(3 * 366 * 24 * 3_600_000)
    await shop.erase()
    owner = await shop.desk('marguerite')
    await owner.get(report).expect(404)
    const { body } = await owner.get('/api/erasures').expect(200)
    expect(body.erasures.slice(0, 2)).toMatchObject([
      { reason: 'came-late', by: null, counts: { reports: 1, cards: 0 } },
      { reason: 'came-late', by: null, counts: { refused: 1 } },
    ])
    expect(await faults()).toEqual([])
    await shop.erase()
    expect((await owner.get('/api/erasures').expect(200)).body.erasures).toHaveLength(4)
  })

  it('is a database that was restored from before: a signed note outside of it has the person erased again', async () => {
    const { pool, digestPlaces } = shop.parts
    const { rows } = await pool.query(
      'select id from customers where erased_at is null and survivor_id is null',
    )
    const [person, other] = rows.map(({ id }) => `/api/customers/${id}`)
    if (person === undefined || other === undefined) throw new Error('two customers')
    const before = await rowsOf(shop, 'select id, name from customers')
    await owner.post(`${person}/erasure`, asked).expect(201)
    // As a backup from before has it.
    await unerase(shop, before)
    const folder = join(digestPlaces.digestFolder, shop.demo.shop.id)
    const [note = ''] = readdirSync(folder).filter((name) => name.startsWith('erased-'))
    const forged = JSON.parse(readFileSync(join(folder, note), 'utf8'))
    const erasureId = randomUUID()
    writeFileSync(
      join(folder, `erased-${erasureId}.json`),
      JSON.stringify({ ...forged, erasureId, customerId: other.split('/').at(-1) }),
    )
    await shop.erase()
    expect((await owner.get(`${person}/erasure`).expect(200)).body.erasedAt).not.toBeNull()
    expect((await owner.get(`/api/customers/${customerId}/erasure`).expect(200)).body.erasedAt).not.toBeNull()
    expect((await owner.get(`${other}/erasure`).expect(200)).body.erasedAt).toBeNull()
  })
})
