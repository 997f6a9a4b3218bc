import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { paymentOf, readOrder, refundOf } from '../support/desk-order.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { moneyOf, sideOf, type WriteEntry, writerOn } from '../support/write-entry.ts'

let shop: TestApp
let desk: Caller
let write: WriteEntry
let order: string
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  await replay.sendUntil(lines)
  write = writerOn(shop, orderId)
  const { payload, sides } = paymentOf(4_000, 'card')
  expect(await write(desk, 'payment.noted', payload, sides)).toMatchObject({ result: 'accepted' })
  order = orderId
})
afterAll(() => shop.stop())

const path = (day: string, file = '') => `/api/day${file}?locationId=${shop.demo.home.id}&day=${day}`

it('has what was paid, by method, and what the open orders still owe', async () => {
  const { body } = await desk.get(path('2026-01-12')).expect(200)
  const [paid] = body.movements
  expect(paid).toMatchObject({ by: 'Ottoline Pask', isCorrection: false, amountCents: 4_000, method: 'card' })
  expect(body.totals).toEqual([{ method: paid.method, receivedCents: paid.amountCents, returnedCents: 0 }])
  // The inspection of $52.00 was agreed, and nothing else was answered yet.
  expect(body.balances).toMatchObject([{ customer: 'W. Dunmore-Gray', owedCents: 1_200, givenBackCents: 0 }])
})

it('is of the place’s own clock', async () => {
  expect((await desk.get(path('2026-01-11')).expect(200)).body.movements).toEqual([])
  expect((await desk.get(path('2026-01-13')).expect(200)).body.movements).toEqual([])
})

it('comes as a file', async () => {
  const { text } = await desk.get(path('2026-01-12', '.csv')).expect(200)
  expect(text.split('\r\n')[0]).toContain('order,at,by,method,amount,correction')
  // The offset of America/New_York in January: IANA time zone database. In UTC an evening's payment would be of the next day.
  expect(text).toMatch(/,2026-01-12T\d\d:\d\d:\d\d-05:00,Ottoline Pask,card,40\.00,no/)
})

it('is for those who take money', async () => {
  await (await shop.desk('greta')).get(path('2026-01-12')).expect(403)
  const { body } = await desk
    .get('/api/day?locationId=019bb314-2300-7000-8000-000000000000&day=2026-01-12')
    .expect(404)
  expect(body.code).toBe('RECORD_NOT_FOUND')
})

it('has what was given back, and the order owes it again', async () => {
  const { payload, sides } = refundOf(await readOrder(desk, order), 1_500, 'card')
  const manager = await shop.desk('marguerite')
  expect(await write(manager, 'payment.noted', payload, sides)).toMatchObject({ result: 'accepted' })
  const { body } = await desk.get(path('2026-01-12')).expect(200)
  expect(body.totals).toEqual([{ method: 'card', receivedCents: 4_000, returnedCents: 1_500 }])
  expect(body.movements).toMatchObject([{ amountCents: 4_000 }, { amountCents: -1_500 }])
  expect(body.balances).toMatchObject([{ owedCents: 2_700, givenBackCents: 1_500 }])
})

it('counts a payment that was corrected as it was: what was typed wrong is not given back', async () => {
  const [noted] = (await readOrder(desk, order)).state.payments
  if (noted === undefined) throw new RangeError('the order has a payment')
  const [money, why] = [moneyOf({ amountCents: 4_500 }), sideOf('Counted again.')]
  const of = { paymentId: noted.written.entryId, replaces: noted.money }
  const corrected = { ...of, money: money.digest, method: 'card' as const, why: why.digest }
  expect(await write(desk, 'payment.corrected', corrected, [money, why])).toMatchObject({
    result: 'accepted',
  })
  const { body } = await desk.get(path('2026-01-12')).expect(200)
  expect(body.movements).toMatchObject([4_000, -1_500, -4_000, 4_500].map((amountCents) => ({ amountCents })))
  expect(body.totals).toEqual([{ method: 'card', receivedCents: 4_500, returnedCents: 1_500 }])
})

it('keeps the debt of an order that ended days ago without a payment, for three months', async () => {
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  await (await replayOn(shop)).sendUntil(lines)
  await shop.deps.pool.query(
    "update order_heads set is_open = false, ended_at = '2026-01-09T21:00:00Z' where order_id = $1",
    [orderId],
  )
  const owing = async (day: string) =>
    (await desk.get(path(day)).expect(200)).body.balances.filter(
      (one: { orderId: string }) => one.orderId === orderId,
    )
  // The inspection was agreed, and nobody paid it.
  expect(await owing('2026-01-12')).toMatchObject([{ owedCents: 5_200 }])
  expect(await owing('2026-01-08')).toEqual([])
  expect(await owing('2026-04-20')).toEqual([])
})
