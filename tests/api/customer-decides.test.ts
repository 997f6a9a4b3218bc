import { fold } from '@bayledger/ledger/fold'
import { nextMoves } from '@bayledger/ledger/questions/moves'
import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { customerPhone, decisionOn, type ShownBundle } from '../support/customer-phone.ts'
import { nextEstimate, readOrder } from '../support/desk-order.ts'
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
const { shownOrder, openedBy, decisionsOf } = customerPhone(() => ({ shop, replay, desk }))

const answerOn = async (phone: Caller): Promise<string | null> =>
  (await phone.get('/api/customer/order').expect(200)).body.estimate.bundles[0].answer

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

  it('with Yes by two phones at once is taken once: the other is told, and the answer is on both', async () => {
    const { phone, link, orderId } = await shownOrder()
    const other = await openedBy(link)
    const [one, two] = [await decisionOn(phone), await decisionOn(other)]
    const replies = await Promise.all([
      phone.post('/api/customer/decisions', one),
      other.post('/api/customer/decisions', two),
    ])
    expect(replies.map(({ status }) => status).toSorted()).toEqual([201, 422])
    const late = replies.find(({ status }) => status === 422)
    expect(late?.body).toMatchObject({ reason: 'BUNDLE_ALREADY_DECIDED' })
    expect(late?.body.detail).toMatch(/already answered/)
    const taken = replies[0].status === 201 ? one : two
    expect(await decisionsOf(orderId)).toMatchObject([{ id: taken.entryId }])
    for (const caller of [phone, other]) expect(await answerOn(caller)).toBe('authorized')
  })

  // A No takes back a Yes until work begins, and a Yes by link takes back no No.
  it('with Yes on one phone and No on another at once ends as No, whichever came first', async () => {
    const { phone, link, orderId } = await shownOrder()
    const other = await openedBy(link)
    const [yes, no] = [await decisionOn(phone), await decisionOn(other, 'declined')]
    const [said, refused] = await Promise.all([
      phone.post('/api/customer/decisions', yes),
      other.post('/api/customer/decisions', no),
    ])
    expect(refused.status).toBe(201)
    if (said.status !== 201) expect(said.body).toMatchObject({ reason: 'BUNDLE_ALREADY_DECIDED' })
    expect((await decisionsOf(orderId)).map(({ id }) => id)).toEqual(
      said.status === 201 ? [yes.entryId, no.entryId] : [no.entryId],
    )
    for (const caller of [phone, other]) expect(await answerOn(caller)).toBe('declined')
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

    const again = await openedBy(link)
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
