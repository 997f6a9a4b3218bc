import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp, type TestTablet } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { putOut } from '../support/put-out.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
let orderId: string
let first: { readonly tablet: TestTablet; readonly person: Caller }
let second: typeof first

const enter = async (person: 'ines' | 'greta') => {
  const tablet = await shop.tablet()
  return { tablet, person: await tablet.signIn(person) }
}
const isAlone = async ({ person }: typeof first): Promise<boolean> =>
  (await person.get(`/api/orders/${orderId}`).expect(200)).body.heldAlone

beforeAll(async () => {
  shop = await startTestApp()
  const copy = freshCopy(shop.demo, 'T-2602')
  orderId = copy.orderId
  await (await replayOn(shop)).sendUntil(copy.lines, ({ draft }) => draft.kind === 'surroundings.recorded')
  first = await enter('ines')
  second = await enter('greta')
})
afterAll(() => shop.stop())

describe('an order', () => {
  it('is held by one tablet alone until another one reads it', async () => {
    expect(await isAlone(first)).toBe(true)
    expect(await isAlone(first)).toBe(true)
    expect(await isAlone(second)).toBe(false)
    expect(await isAlone(first)).toBe(false)
  })

  it('says so to a tablet that reads only what is new', async () => {
    const { body } = await first.person.get(`/api/orders/${orderId}/entries?after=1`).expect(200)
    expect(body.heldAlone).toBe(false)
  })

  it('is held by nobody at the desk', async () => {
    const desk = await shop.desk('ottoline')
    expect((await desk.get(`/api/orders/${orderId}`).expect(200)).body.heldAlone).toBe(false)
    await desk.put('/api/held-orders', { orderIds: [] }).expect(204)
    expect(await isAlone(first)).toBe(false)
  })

  it('is held alone again once the other tablet has dropped it, and goes on being held while it keeps it', async () => {
    await second.person.put('/api/held-orders', { orderIds: [orderId] }).expect(204)
    expect(await isAlone(first)).toBe(false)
    await second.person.put('/api/held-orders', { orderIds: [] }).expect(204)
    expect(await isAlone(first)).toBe(true)
  })

  it('is held no more by a tablet that was put out', async () => {
    expect(await isAlone(second)).toBe(false)
    expect(await isAlone(first)).toBe(false)
    await putOut(shop, second.tablet.deviceId)
    expect(await isAlone(first)).toBe(true)
  })
})
