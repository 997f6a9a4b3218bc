import { randomUUID } from 'node:crypto'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { customerPhone, decisionOn } from '../support/customer-phone.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
})
afterAll(() => shop.stop())
const { shownOrder } = customerPhone(() => ({ shop, replay, desk }))

describe('a customer link', () => {
  it('is kept as a digest, opens one order, and shows no VIN, no address and no other customer', async () => {
    const { orderId, link, phone } = await shownOrder()
    expect(link.address).toBe(`http://localhost:4310/customer#${link.secret}`)
    const { rows } = await shop.deps.pool.query('select l::text as line from customer_links l')
    for (const { line } of rows) expect(line).not.toContain(link.secret)
    const { body } = await phone.get('/api/customer/order').expect(200)
    expect(body).toMatchObject({ shopName: 'Tamber Street Tire & Wheel', drive: { verdict: 'may-drive' } })
    expect(body.findings).toEqual([
      {
        code: 'sensor-silent',
        severity: 'cause',
        wheels: ['RR'],
        sentence: expect.stringContaining('right rear'),
        figures: [
          'Right rear sensor: silent at 3 tries, while others answered',
          expect.stringContaining('the vehicle misses the right rear too'),
        ],
        remedies: [],
      },
    ])
    expect(body.silent).toEqual({ RR: 3 })
    expect(body.lacks).toEqual([{ wheel: 'RR', words: expect.stringContaining('Colder air took 2.2 psi.') }])
    expect(body.technicianDiffers).toBe(false)
    expect(body.estimate.totalCents).toBe(20_340)
    expect(body.gauges.RR).toMatchObject({ value: 32.7, unit: 'psi', labelPsi: 35 })
    const vin = (await desk.get(`/api/orders/${orderId}`).expect(200)).body.vehicle.vin
    expect(JSON.stringify(body)).not.toContain(vin ?? 'no VIN on file')
    await phone.get(`/api/orders/${orderId}`).expect(401)
  })

  it('notes each opening, and is shut when it is withdrawn or a week old', async () => {
    const { orderId, link, phone } = await shownOrder()
    const { body } = await desk.get(`/api/orders/${orderId}/links`).expect(200)
    expect(body.links[0]).toMatchObject({ linkId: link.linkId, openedAt: [expect.any(String)] })
    await desk.delete(`/api/orders/${orderId}/links/${link.linkId}`).expect(204)
    expect((await phone.get('/api/customer/order').expect(401)).body.code).toBe('LINK_REFUSED')
    const again = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(401)
    const guessed = await shop.nobody.post('/api/customer/session', { secret: 'x'.repeat(43) }).expect(401)
    expect({ ...again.body, requestId: '' }).toEqual({ ...guessed.body, requestId: '' })
    expect((await desk.delete(`/api/orders/${orderId}/links/${randomUUID()}`).expect(404)).body.code).toBe(
      'LINK_NOT_FOUND',
    )
    expect((await desk.post(`/api/orders/${randomUUID()}/links`).expect(404)).body.code).toBe(
      'ORDER_NOT_FOUND',
    )
  })

  it('shows a light that nothing explains yet, and does not call it a cause', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2613')
    await replay.sendUntil(lines)
    const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const { body } = await shop.withCookies(cookiesIn(opened)).get('/api/customer/order').expect(200)
    expect(body.findings).toEqual([
      {
        code: 'malfunction-unexplained',
        severity: 'unexplained',
        wheels: [],
        sentence: expect.stringContaining('sell you a part on a guess'),
        figures: expect.arrayContaining([expect.any(String)]),
        remedies: [],
      },
    ])
  })

  it('shows a danger with what removes it and its price, and how the vehicle gets away', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2614')
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'estimate.shown')
    const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const { body } = await shop.withCookies(cookiesIn(opened)).get('/api/customer/order').expect(200)
    expect(body.drive).toMatchObject({
      verdict: 'do-not-drive',
      advice: [
        'Before it is moved, call us, (555) 555-0100.',
        'Have it towed, or have us fit the spare in its place: full size, 63.8 psi, no damage seen.',
      ],
    })
    expect(body.findings).toMatchObject([
      {
        code: 'tire-unsafe',
        remedies: ['What fixes it: new tire, left front, $193.57 with tax. You have not answered.'],
      },
    ])
    const tire = body.estimate.bundles.find(({ title }: { title: string }) => title.startsWith('New tire'))
    expect(tire.removesDanger).toBe(true)
  })

  it('shows no findings before they are confirmed', async () => {
    const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
    await replay.sendUntil(lines, ({ draft }) => draft.kind === 'diagnosis.confirmed')
    const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const { body } = await shop.withCookies(cookiesIn(opened)).get('/api/customer/order').expect(200)
    expect(body).toMatchObject({
      findings: [],
      drive: { verdict: 'not-yet-known' },
      estimate: null,
      report: null,
    })
  })
})

describe("the customer's language", () => {
  afterEach(async () => {
    await shop.parts.prisma.customer.updateMany({ data: { language: 'en' } })
  })

  it('is chosen on their page, and page, estimate, answer and card follow it', async () => {
    const { orderId, phone } = await shownOrder()
    expect((await phone.get('/api/customer/order').expect(200)).body.language).toBe('en')
    await phone.put('/api/customer/language', { language: 'es' }).expect(204)
    const { body: order } = await phone.get('/api/customer/order').expect(200)
    expect(order).toMatchObject({
      language: 'es',
      drive: { sentence: 'Sí; mida el aire cada semana.' },
      findings: [
        {
          sentence:
            'El sensor de la rueda trasera derecha no funciona. Lo probamos 3 veces; los demás contestaron.',
        },
      ],
    })
    const [offer] = order.estimate.bundles
    expect(offer.title).toBe('Sensor nuevo: trasera derecha')
    expect(offer.cautions[0].words).toContain('Mida con un medidor el aire')
    expect(order.estimate.totalCents).toBe(20_340)
    await phone.post('/api/customer/decisions', await decisionOn(phone)).expect(201)
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(body.customer).toMatchObject({ language: 'es', version: 2 })
    expect(body.entries.at(-2)).toMatchObject({ kind: 'estimate.decided', payload: { language: 'es' } })
    const shown = body.sides.find(({ side }: { side: string }) => side === 'shown')?.text
    expect(JSON.parse(shown)).toMatchObject({ language: 'es', bundles: [{ title: offer.title }, {}] })
  })

  it('was another one when an answer was given: the page is read again before it counts', async () => {
    const { phone } = await shownOrder()
    const decision = await decisionOn(phone)
    await phone.put('/api/customer/language', { language: 'es' }).expect(204)
    const { body } = await phone.post('/api/customer/decisions', decision).expect(422)
    expect(body).toMatchObject({ code: 'ENTRY_REFUSED', reason: 'SHOWN_MISSING' })
  })

  it('is one that there are words for', async () => {
    const { phone } = await shownOrder()
    const { body } = await phone.put('/api/customer/language', { language: 'fr' }).expect(422)
    expect(body).toMatchObject({ code: 'FIELDS_INVALID', fields: [{ field: 'language' }] })
    await shop.nobody.put('/api/customer/language', { language: 'es' }).expect(401)
  })
})
