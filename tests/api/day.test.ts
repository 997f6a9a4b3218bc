import { randomBytes, randomUUID } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/digests'
import { versionOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { type Caller, demoNow, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
let desk: Caller
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  desk = await replay.as('ottoline', 'desk')
  const { orderId, lines } = freshCopy(shop.demo, 'T-2602')
  await replay.sendUntil(lines)
  const salt = randomBytes(32)
  const text = '{"amountCents":4000}'
  const digest = sideDigest(text, salt)
  const payment = {
    ...{ id: randomUUID(), orderId, kind: 'payment.noted', version: versionOf('payment.noted') },
    ...{ payload: { money: digest, method: 'card' }, writtenAt: demoNow, restsOn: [] },
  }
  const sides = [{ digest, salt: salt.toString('base64'), text }]
  const { body } = await desk.post('/api/entries', { entries: [payment], sides }).expect(200)
  expect(body.results[0]).toMatchObject({ result: 'accepted' })
})
afterAll(() => shop.stop())

const path = (day: string, file = '') => `/api/day${file}?locationId=${shop.demo.home.id}&day=${day}`

it('has what was paid, by method, and what the open orders still owe', async () => {
  const { body } = await desk.get(path('2026-01-12')).expect(200)
  const [paid] = body.movements
  expect(paid).toMatchObject({ by: 'Ottoline Pask', isCorrection: false, amountCents: 4_000, method: 'card' })
  expect(body.totals).toEqual([{ method: paid.method, receivedCents: paid.amountCents, returnedCents: 0 }])
  // The inspection of $52.00 was agreed, and nothing else was answered yet.
  expect(body.balances).toMatchObject([{ customer: 'W. Dunmore-Gray', owedCents: 1_200 }])
})

it('is of the place’s own clock', async () => {
  expect((await desk.get(path('2026-01-11')).expect(200)).body.movements).toEqual([])
  expect((await desk.get(path('2026-01-13')).expect(200)).body.movements).toEqual([])
})

it('comes as a file', async () => {
  const { text } = await desk.get(path('2026-01-12', '.csv')).expect(200)
  expect(text.split('\r\n')[0]).toContain('order,at,by,method,amount,correction')
  expect(text).toMatch(/Ottoline Pask,card,40\.00,no/)
})

it('is for those who take money', async () => {
  await (await shop.desk('greta')).get(path('2026-01-12')).expect(403)
  const { body } = await desk
    .get('/api/day?locationId=019bb314-2300-7000-8000-000000000000&day=2026-01-12')
    .expect(404)
  expect(body.code).toBe('RECORD_NOT_FOUND')
})
