import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { paymentOf, readOrder, refundOf } from '../support/desk-order.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { writerOn } from '../support/write-entry.ts'

/** What an entry says may be more than its writer may say, even where the kind is theirs to write. */
let shop: TestApp
let orderId: string
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  owner = await shop.desk('marguerite')
  const order = freshCopy(shop.demo, 'T-2605')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
})
afterAll(() => shop.stop())

const pay = async (by: Caller, amountCents: number) => {
  const order = await readOrder(owner, orderId)
  const { payload, sides } =
    amountCents < 0 ? refundOf(order, 0 - amountCents, 'card') : paymentOf(amountCents, 'card')
  return writerOn(shop, orderId)(by, 'payment.noted', payload, sides)
}

describe('a payment', () => {
  it('is not taken from a technician, neither received nor given back, at the desk or on a tablet', async () => {
    const atDesk = await shop.desk('rufus')
    for (const by of [atDesk, await (await shop.tablet()).signIn('rufus')])
      for (const cents of [50_000, -50_000]) {
        const result = await pay(by, cents)
        expect(result).toMatchObject({
          result: 'refused',
          code: by === atDesk ? 'ROLE_NOT_ALLOWED' : 'ENTRY_KIND_NOT_ALLOWED',
        })
        expect(result).toMatchObject({ words: expect.stringMatching(/\S/) })
      }
  })

  it('is taken from an advisor, who may give nothing back', async () => {
    const advisor = await shop.desk('ottoline')
    expect(await pay(advisor, -500)).toMatchObject({
      result: 'refused',
      code: 'REFUND_NOT_ALLOWED',
      words: expect.stringMatching(/manager|owner/),
    })
    expect(await pay(owner, -500)).toMatchObject({ result: 'accepted' })
  })
})
