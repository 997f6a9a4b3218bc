import { randomUUID } from 'node:crypto'
import { fold } from '@bayledger/ledger/fold'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, cookiesIn, startTestApp, type TestApp } from '../support/app.ts'
import { nextEstimate, readOrder } from '../support/desk-order.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { writerOn } from '../support/write-entry.ts'

let shop: TestApp
let replay: Replay
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
})
afterAll(() => shop.stop())

/** An order whose estimate was shown, with a link and a phone that has opened it. */
const shownOrder = async () => {
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  await replay.sendUntil(lines)
  const { body: link } = await desk.post(`/api/orders/${orderId}/links`).expect(201)
  const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
  return { orderId, link, phone: shop.withCookies(cookiesIn(opened)) }
}

type ShownBundle = {
  bundleKey: string
  agreedBefore: boolean
  answer: string | null
  answerable: boolean
  cautions: { number: string; version: number }[]
}
const isAsked = ({ agreedBefore }: Pick<ShownBundle, 'agreedBefore'>) => !agreedBefore

const decisionOn = async (phone: Caller, answer: 'authorized' | 'declined' | 'deferred' = 'authorized') => {
  const { body: order } = await phone.get('/api/customer/order').expect(200)
  return {
    entryId: randomUUID(),
    revision: order.estimate.revision,
    digest: order.estimate.digest,
    shown: order.estimate.shown,
    answers: order.estimate.bundles.filter(isAsked).map(({ bundleKey, cautions }: ShownBundle) => ({
      bundleKey,
      answer,
      deferredUntil: answer === 'deferred' ? '2026-02-12' : null,
      cautionsShown:
        answer === 'authorized' ? [] : cautions.map(({ number, version }) => ({ number, version })),
    })),
    name: 'W. Dunmore-Gray',
    relation: 'owner',
    signature: { form: 'typed', text: 'W. Dunmore-Gray' },
    agreesToElectronicRecord: true,
    wantsRemovedParts: false,
  }
}

/** Every answer that the order holds. */
const decisionsOf = async (orderId: string): Promise<{ id: string; payload: object }[]> => {
  const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
  return body.entries.filter(({ kind }: { kind: string }) => kind === 'estimate.decided')
}

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

describe('deciding by link', () => {
  it('enters the answers with a signature, and the plan that follows', async () => {
    const { orderId, phone } = await shownOrder()
    const decision = await decisionOn(phone)
    const first = await phone.post('/api/customer/decisions', decision).expect(201)
    const again = await phone.post('/api/customer/decisions', decision).expect(201)
    expect(again.body).toEqual(first.body)
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    const kinds = body.entries.slice(-2).map(({ kind }: { kind: string }) => kind)
    expect(kinds).toEqual(['estimate.decided', 'plan.issued'])
    expect(body.sides.map(({ text }: { text: string }) => text)).toContain('W. Dunmore-Gray')
    const shownText = body.sides.find(({ side }: { side: string }) => side === 'shown')?.text
    expect(JSON.parse(shownText)).toMatchObject({
      language: 'en',
      revision: 1,
      totalCents: 20_340,
      bundles: [
        { title: 'New sensor, right rear', totalCents: 15_140 },
        { title: 'Inspection', totalCents: 5_200 },
      ],
    })
    expect(nextMoves(fold(body.entries), shop.clock.now().toISOString())[0]?.mover).toBe('bay')
    const shown = (await phone.get('/api/customer/order').expect(200)).body
    expect(shown.estimate.bundles.map(({ answer }: ShownBundle) => answer)).toEqual(['authorized', null])
    expect(shown.estimate.look).toEqual({ terms: 'charged', cents: 5_200 })
    expect(shown.estimate.bundles.every(({ answerable }: { answerable: boolean }) => !answerable)).toBe(true)
  })

  it('is refused with a typed signature of another name, in words, and nothing is decided', async () => {
    const { phone, orderId } = await shownOrder()
    const decision = await decisionOn(phone)
    const forged = { ...decision, signature: { form: 'typed', text: 'X. Anybody' } }
    const { body } = await phone.post('/api/customer/decisions', forged).expect(422)
    expect(body).toMatchObject({ code: 'ENTRY_REFUSED', reason: 'SIGNATURE_OF_ANOTHER' })
    expect(body.detail).toBe(
      'The name typed as a signature is not the name of who decides. Write both the same.',
    )
    const { body: order } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(order.entries.filter(({ kind }: { kind: string }) => kind === 'estimate.decided')).toEqual([])
    const anew = { ...decision, signature: { form: 'typed', text: 'w dunmore gray' } }
    await phone.post('/api/customer/decisions', anew).expect(201)
  })

  it('is refused the second time, with words for the customer', async () => {
    const { phone } = await shownOrder()
    await phone.post('/api/customer/decisions', await decisionOn(phone)).expect(201)
    const { body } = await phone.post('/api/customer/decisions', await decisionOn(phone)).expect(422)
    expect(body).toMatchObject({ code: 'ENTRY_REFUSED', reason: 'BUNDLE_ALREADY_DECIDED' })
    expect(body.detail).toMatch(/already answered/)
  })

  it('by two phones at once is taken once: the other is told, and the answer that was taken is on both', async () => {
    const { phone, link, orderId } = await shownOrder()
    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const other = shop.withCookies(cookiesIn(opened))
    const [yes, no] = [await decisionOn(phone), await decisionOn(other, 'declined')]
    const replies = await Promise.all([
      phone.post('/api/customer/decisions', yes),
      other.post('/api/customer/decisions', no),
    ])
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 422])
    const late = replies.find(({ status }) => status === 422)
    expect(late?.body).toMatchObject({ reason: 'BUNDLE_ALREADY_DECIDED' })
    expect(late?.body.detail).toMatch(/already answered|answered with No/)
    const taken = replies[0].status === 201 ? yes : no
    expect(await decisionsOf(orderId)).toMatchObject([{ id: taken.entryId }])
    for (const caller of [phone, other]) {
      const { body } = await caller.get('/api/customer/order').expect(200)
      expect(body.estimate.bundles[0].answer).toBe(taken.answers[0].answer)
    }
  })

  it('is stored once where the phone never got the reply and sends it again', async () => {
    const { phone, orderId } = await shownOrder()
    const decision = await decisionOn(phone)
    const first = await phone.post('/api/customer/decisions', decision).expect(201)
    const again = await phone.post('/api/customer/decisions', decision).expect(201)
    expect(again.body).toEqual(first.body)
    const { body } = await desk.get(`/api/orders/${orderId}`).expect(200)
    expect(body.entries.filter(({ kind }: { kind: string }) => kind === 'estimate.decided')).toHaveLength(1)
  })

  it('may be done again for what was put off', async () => {
    const { phone } = await shownOrder()
    await phone.post('/api/customer/decisions', await decisionOn(phone, 'deferred')).expect(201)
    await phone.post('/api/customer/decisions', await decisionOn(phone)).expect(201)
  })

  it('is refused for a version that there is not, and for one that was changed on its way', async () => {
    const { phone } = await shownOrder()
    const decision = await decisionOn(phone)
    const none = await phone.post('/api/customer/decisions', { ...decision, revision: 9 }).expect(422)
    expect(none.body.reason).toBe('ESTIMATE_REVISION_STALE')
    const changed = await phone
      .post('/api/customer/decisions', { ...decision, digest: '0'.repeat(64) })
      .expect(422)
    expect(changed.body.reason).toBe('ESTIMATE_DIGEST_DIFFERS')
    const unseen = await phone
      .post('/api/customer/decisions', { ...decision, shown: '0'.repeat(64) })
      .expect(422)
    expect(unseen.body.detail).toMatch(/no longer what this page showed you/)
  })

  it('on a page that is older than a new version is refused in words; the same link opens that version, and it is answered', async () => {
    const { phone, link, orderId } = await shownOrder()
    const late = await decisionOn(phone)
    const dearer = { ...firstPrices, laborCentsPerHour: firstPrices.laborCentsPerHour + 1_000 }
    const { payload, sides } = nextEstimate(await readOrder(desk, orderId), dearer)
    const issued = await writerOn(shop, orderId)(desk, 'estimate.issued', payload, sides)
    expect(issued).toMatchObject({ result: 'accepted' })
    const { body } = await phone.post('/api/customer/decisions', late).expect(422)
    expect(body).toMatchObject({
      reason: 'ESTIMATE_REVISION_STALE',
      detail: 'A newer version of this estimate exists. Read that one and answer it.',
    })
    expect(await decisionsOf(orderId)).toEqual([])

    const opened = await shop.nobody.post('/api/customer/session', { secret: link.secret }).expect(201)
    const again = shop.withCookies(cookiesIn(opened))
    const { estimate } = (await again.get('/api/customer/order').expect(200)).body
    expect(estimate.revision).toBe(2)
    expect(estimate.totalCents).toBeGreaterThan(20_340)
    await again.post('/api/customer/decisions', await decisionOn(again)).expect(201)
    expect(await decisionsOf(orderId)).toMatchObject([{ payload: { revision: 2 } }])
  })

  it('needs the caution to have been shown with a No to safety work', async () => {
    const { phone } = await shownOrder()
    const decision = await decisionOn(phone, 'declined')
    const answers = decision.answers.map((answer: object) => ({ ...answer, cautionsShown: [] }))
    const { body } = await phone.post('/api/customer/decisions', { ...decision, answers }).expect(422)
    expect(body.reason).toBe('CAUTION_NOT_SHOWN')
  })

  it('names what is missing, the signature included', async () => {
    const { phone } = await shownOrder()
    const { body } = await phone
      .post('/api/customer/decisions', {
        ...(await decisionOn(phone)),
        signature: { form: 'drawn', text: '' },
        agreesToElectronicRecord: false,
      })
      .expect(422)
    expect(body.fields.map(({ field }: { field: string }) => field).toSorted()).toEqual([
      'agreesToElectronicRecord',
      'signature.text',
    ])
  })

  it('answers that there is no report yet', async () => {
    const { phone } = await shownOrder()
    expect((await phone.get('/api/customer/report').expect(404)).body.code).toBe('REPORT_NOT_FOUND')
  })
})
