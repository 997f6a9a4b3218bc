import { randomBytes, randomUUID } from 'node:crypto'
import { sideDigest } from '@bayledger/ledger/digests'
import { versionOf } from '@bayledger/ledger/registry'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

/** What an entry says may be more than its writer may say, even where the kind is theirs to write. */
let shop: TestApp
let orderId: string
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  const order = freshCopy(shop.demo, 'T-2605')
  orderId = order.orderId
  await replay.sendUntil(order.lines)
})
afterAll(() => shop.stop())

const pay = async (by: Caller, amountCents: number) => {
  const salt = randomBytes(32)
  const text = JSON.stringify({ amountCents })
  const money = sideDigest(text, salt)
  const entry = {
    id: randomUUID(),
    orderId,
    kind: 'payment.noted',
    version: versionOf('payment.noted'),
    payload: { money, method: 'card' },
    writtenAt: shop.clock.now().toISOString(),
    restsOn: [],
  }
  const sides = [{ digest: money, salt: salt.toString('base64'), text }]
  return (await by.post('/api/entries', { entries: [entry], sides }).expect(200)).body.results[0]
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
        expect(result.words).not.toBe('')
      }
  })

  it('is taken from an advisor, who may give nothing back', async () => {
    const advisor = await shop.desk('ottoline')
    const refused = await pay(advisor, -500)
    expect(refused).toMatchObject({ result: 'refused', code: 'REFUND_NOT_ALLOWED' })
    expect(refused.words).toMatch(/manager|owner/)
    expect(await pay(await shop.desk('marguerite'), -500)).toMatchObject({ result: 'accepted' })
  })
})
