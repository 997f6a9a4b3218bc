import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { people } from '../../prisma/seeds/demo/people.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { rowsOf } from '../support/rows-of.ts'

const path = '/api/register/retention'
const day = 24 * 3_600_000

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const dueNow = async () => (await owner.get(`${path}/due`).expect(200)).body
/** Time passes; a session does not last so long. */
const pass = async (days: number) => {
  shop.clock.advance(days * day)
  owner = await shop.desk('marguerite')
}
const customers = async () =>
  (await rowsOf(shop, 'select count(*)::int as n from customers where erased_at is null'))[0]?.n

describe('for how long the shop keeps what is of people', () => {
  it('is the usual until an owner writes other times, which are kept as versions', async () => {
    const { body } = await owner.get(path).expect(200)
    expect(body).toMatchObject({
      record: { version: 0, content: { customerYears: 7, reportYears: 3 } },
      history: [],
    })
    const content = { ...body.record.content, customerYears: 2, draftDays: 10 }
    await (await shop.desk('ottoline')).put(path, { content }, { 'if-match': '"0"' }).expect(403)
    await owner.put(path, { content: { ...content, draftDays: 0 } }, { 'if-match': '"0"' }).expect(422)
    await owner.put(path, { content }, { 'if-match': '"0"' }).expect(200)
    await owner.put(path, { content }, { 'if-match': '"0"' }).expect(412)
    const { body: after } = await owner.get(path).expect(200)
    expect(after.history).toMatchObject([{ version: 1, by: people.marguerite.name }])
  })

  it('forgets what is older, and nothing sooner', async () => {
    await owner.put(`/api/write-up-drafts/${randomUUID()}`, { body: { form: {} } }).expect(204)
    await pass(9)
    await shop.erase()
    expect((await dueNow()).counts).toMatchObject({ drafts: 0 })
    expect(await rowsOf(shop, 'select from write_up_drafts')).toHaveLength(1)
    await pass(2)
    expect((await dueNow()).counts).toMatchObject({ drafts: 1 })
    await shop.erase()
    expect((await dueNow()).counts).toMatchObject({ drafts: 0 })
    expect(await rowsOf(shop, 'select from write_up_drafts')).toEqual([])
  })

  it('shows whose time is over within a month, erases them when it is, and keeps who is held', async () => {
    // The cards of the demo were written when it was loaded: by now as well as by the shop's clock, two years ago.
    await rowsOf(shop, 'update customers set updated_at = $1', [new Date(shop.clock.now().getTime())])
    const all = Number(await customers())
    const held = shop.demo.customers[0]
    const hold = { subject: 'customer', subjectId: held?.id, reason: 'A claim' }
    await owner.post('/api/holds', hold).expect(201)
    expect((await dueNow()).customers).toEqual([])
    await pass(710)
    const { customers: due } = await dueNow()
    expect(due.length).toBe(Math.min(all, 50))
    expect(due).toContainEqual(expect.objectContaining({ customerId: held?.id, held: true }))
    await shop.erase()
    expect(await customers()).toBe(all)
    await pass(31)
    await shop.erase()
    expect(await customers()).toBe(Math.max(1, all - 49))
    const { body } = await owner.get('/api/erasures').expect(200)
    expect(body.erasures[0]).toMatchObject({ reason: 'time-over', by: null, identity: null })
    expect((await owner.get(`/api/customers/${held?.id}`).expect(200)).body.name).toBe(held?.name)
  })
})
