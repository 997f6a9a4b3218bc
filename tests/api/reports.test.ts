import { createHash, randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
let orderId: string
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const finished = freshCopy(shop.demo, 'T-2601')
  orderId = finished.orderId
  await replay.sendUntil(finished.lines)
})
afterAll(() => shop.stop())

const pdfOf = async (number: string): Promise<Buffer> =>
  (await desk.get(`/api/orders/${orderId}/reports/${number}`).buffer(true).parse(binary).expect(200)).body

const binary = (reply: unknown, done: (error: Error | null, body: Buffer) => void): void => {
  const response = reply as NodeJS.ReadableStream
  const parts: Buffer[] = []
  response.on('data', (part: Buffer) => parts.push(part))
  response.on('end', () => done(null, Buffer.concat(parts)))
}
const check = (bytes: Buffer) =>
  shop.nobody.call('post', '/api/report-checks', { 'content-type': 'application/pdf' }).send(bytes)

describe('sealing the report', () => {
  it('stores the bytes, enters their digest, and answers the same for the same id', async () => {
    const entryId = randomUUID()
    const first = await desk.post(`/api/orders/${orderId}/reports`, { entryId }).expect(201)
    const again = await desk.post(`/api/orders/${orderId}/reports`, { entryId }).expect(201)
    expect(again.body).toEqual(first.body)
    const bytes = await pdfOf(first.body.number)
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(first.body.sha256)
    expect(bytes.length).toBe(first.body.byteLength)
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(body.entries.at(-1)).toMatchObject({
      kind: 'report.sealed',
      seq: first.body.seq,
      given: { reportNumber: first.body.number },
      payload: { pdfSha256: first.body.sha256, composedFrom: { seq: first.body.seq - 1 } },
    })
  })

  it('is sealed again only for what the one before does not say', async () => {
    const { body: order } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const number = order.entries.at(-1).given.reportNumber
    const { body } = await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(409)
    expect(body).toMatchObject({ code: 'REPORT_NOT_DUE', detail: expect.stringContaining(number) })
    const after = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(after.body.entries.length).toBe(order.entries.length)
  })

  it('gives the customer the same bytes by the link', async () => {
    const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const phone = shop.withCookies(cookiesIn(opened))
    const { number } = (await phone.get('/api/customer/order').expect(200)).body.report
    const reply = await phone.get('/api/customer/report').buffer(true).parse(binary).expect(200)
    expect(reply.headers['content-type']).toBe('application/pdf')
    expect(reply.body.equals(await pdfOf(number))).toBe(true)
  })

  it('is refused while something is open, with words that name it', async () => {
    const open = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(open.lines)
    const { body } = await desk
      .post(`/api/orders/${open.orderId}/reports`, { entryId: randomUUID() })
      .expect(409)
    expect(body.code).toBe('REPORT_NOT_DUE')
    expect(body.detail.length).toBeGreaterThan(10)
    await desk.post(`/api/orders/${randomUUID()}/reports`, { entryId: randomUUID() }).expect(404)
  })

  it('finds no report under a number that is not this order’s', async () => {
    const reply = await desk.get(`/api/orders/${randomUUID()}/reports/T-2621-R1`).expect(404)
    expect(reply.body.code).toBe('REPORT_NOT_FOUND')
  })

  it('lets nothing be written after it but the hand-back', async () => {
    const { lines } = freshCopy(shop.demo, 'T-2601')
    const note = lines.find(({ draft }) => draft.kind === 'surroundings.recorded')
    if (!note) throw new Error('no surroundings here')
    const result = await replay.send({ ...note, draft: { ...note.draft, orderId } })
    expect(result).toMatchObject({ result: 'refused', code: 'ORDER_SEALED', kept: true })
  })
})

describe('checking a report', () => {
  it('knows a genuine one, one that was changed, and one that it never sealed', async () => {
    const { body: order } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const number = order.entries.at(-1).given.reportNumber
    const bytes = await pdfOf(number)
    expect((await check(bytes).expect(200)).body).toMatchObject({ verdict: 'genuine', number })
    expect(
      (
        await shop.nobody
          .post('/api/report-checks', { sha256: createHash('sha256').update(bytes).digest('hex') })
          .expect(200)
      ).body.verdict,
    ).toBe('genuine')
    const changed = Buffer.from(bytes)
    changed[bytes.length - 40] = (changed[bytes.length - 40] ?? 0) ^ 1
    expect((await check(changed).expect(200)).body).toMatchObject({ verdict: 'changed', number })
    const madeUp = Buffer.from('%PDF-1.7 Tire-pressure report T-9999-R1, order T-9999')
    const { number: claimed, words, ...rest } = (await check(madeUp).expect(200)).body
    expect([claimed, words]).toEqual(['T-9999-R1', expect.stringContaining('T-9999-R1')])
    expect((await check(changed).expect(200)).body, 'whether the number exists is not told').toMatchObject(
      rest,
    )
    expect((await check(Buffer.concat([bytes, Buffer.from('\n')])).expect(200)).body.verdict).toBe('changed')
    expect((await check(Buffer.from('%PDF-1.7 something else')).expect(200)).body.verdict).toBe('unknown')
  })

  it('names what is wrong with a request that is neither', async () => {
    const { body } = await shop.nobody.post('/api/report-checks', { sha256: 'abc' }).expect(422)
    expect(body.fields[0].field).toBe('sha256')
  })
})

describe('a report in the customer’s language', () => {
  it('is sealed in that of the card, and what was sealed before stays as it was', async () => {
    const { body: order } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const earlier = order.entries.at(-1).given.reportNumber
    const before = await pdfOf(earlier)
    const { customerId, version, ...content } = order.customer
    await desk
      .put(`/api/customers/${customerId}`, { ...content, language: 'es' }, { 'if-match': `"${version}"` })
      .expect(200)
    const { body: later } = await desk
      .post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() })
      .expect(201)
    await desk.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(409)
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const languages = body.entries
      .filter(({ kind }: { kind: string }) => kind === 'report.sealed')
      .map(({ payload }: { payload: { language: string } }) => payload.language)
    expect(languages.slice(-2)).toEqual(['en', 'es'])
    expect(await pdfOf(earlier)).toEqual(before)
    for (const bytes of [before, await pdfOf(later.number)])
      expect((await check(bytes).expect(200)).body.verdict).toBe('genuine')
  })
})
