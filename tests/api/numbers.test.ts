import { randomUUID } from 'node:crypto'
import type { Bar, PictureCode } from '@bayledger/contract/numbers'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type Replay, replayOn } from '../support/replay-order.ts'
import { sideOf, writerOn } from '../support/write-entry.ts'

let shop: TestApp
let replay: Replay
let owner: Caller
/** An order that was worked on and handed back, and a comeback of it that was withdrawn. */
let done: string
let comeback: string
beforeAll(async () => {
  shop = await startTestApp()
  replay = await replayOn(shop)
  owner = await shop.desk('marguerite')
  const first = freshCopy(shop.demo, 'T-2601')
  done = first.orderId
  await replay.sendUntil(first.lines)
  const desk = await replay.as('ottoline', 'desk')
  await desk.post(`/api/orders/${done}/reports`, { entryId: randomUUID() }).expect(201)
  const handedBack = await writerOn(shop, done)(desk, 'order.handed_back', {
    ...{ odometer: null, odometerConfirmed: false, lockingKeyReturned: null, signature: null },
    ...{ retorqueAdvised: true, releaseAgreedBy: null },
  })
  expect(handedBack).toMatchObject({ result: 'accepted' })
  const second = freshCopy(shop.demo, 'T-2601')
  comeback = second.orderId
  await replay.sendUntil(
    second.lines.map((line) =>
      line.draft.kind === 'order.opened'
        ? { ...line, draft: { ...line.draft, payload: { ...line.draft.payload, comebackOf: done } } }
        : line,
    ),
    ({ draft }) => draft.kind === 'diagnosis.issued',
  )
  const words = sideOf('They will come back another day.')
  const withdrawn = { reason: 'customer', words: words.digest } as const
  expect(await writerOn(shop, comeback)(desk, 'order.withdrawn', withdrawn, [words])).toMatchObject({
    result: 'accepted',
  })
})
afterAll(() => shop.stop())

const numbers = async (query = '?from=2026-01-12&until=2026-01-12') =>
  (await owner.get(`/api/numbers${query}`).expect(200)).body
const barsOf = async (code: PictureCode, query?: string): Promise<Bar[]> =>
  (await numbers(query)).pictures.find((one: { code: string }) => one.code === code).bars

describe('numbers for the owner', () => {
  it('count the orders that ended in the range, and each bar leads to its own', async () => {
    const { orders, pictures } = await numbers()
    expect(orders.map(({ orderId }: { orderId: string }) => orderId).toSorted()).toEqual(
      [done, comeback].toSorted(),
    )
    expect(orders[0]).toMatchObject({ endedOn: '2026-01-12' })
    const [bar, ...others] = await barsOf('comebacks')
    expect(others).toEqual([])
    expect(bar?.orders.map((place) => orders[place].orderId)).toEqual([comeback])
    expect(await barsOf('comeback-causes')).toMatchObject([{ label: 'Not recorded', count: 1 }])
    for (const { bars } of pictures)
      for (const { orders: places } of bars as Bar[])
        expect(places.every((place) => orders[place] !== undefined)).toBe(true)
  })

  it('say what was found, what was agreed to and how long it took', async () => {
    const causes = await barsOf('causes')
    expect(causes.reduce((sum, { count }) => sum + count, 0)).toBe(2)
    for (const { count, of } of await barsOf('consent')) expect(count).toBeLessThanOrEqual(of ?? 0)
    const steps = await barsOf('step-minutes')
    const torque = steps.find(({ label }) => label === 'Pressure set')
    expect(torque?.minutes?.middle).toBeGreaterThan(0)
    expect(torque?.minutes?.from).toBeLessThanOrEqual(torque?.minutes?.middle ?? 0)
    expect(await barsOf('job-minutes')).toHaveLength(1)
  })

  it('say whether promises were kept, and what the ready times were worth', async () => {
    const promises = await barsOf('promises')
    expect(promises.map(({ label, count }) => [label, count])).toEqual([['Ready by the first promise', 1]])
    const { readyError } = await numbers()
    expect(readyError.count).toBe(1)
    expect(readyError.medianMinutes).toBeGreaterThan(0)
    expect((await barsOf('ready-error')).map(({ count }) => count)).toEqual([1])
  })

  it('are of one place, and of the days that are asked for by its clock', async () => {
    const [home, other] = shop.demo.locations
    expect((await numbers(`?from=2026-01-12&until=2026-01-12&locationId=${home?.id}`)).orders).toHaveLength(2)
    expect((await numbers(`?from=2026-01-12&until=2026-01-12&locationId=${other?.id}`)).orders).toEqual([])
    expect((await numbers('?from=2026-01-13&until=2026-01-20')).orders).toEqual([])
    expect((await numbers('?from=2026-01-13&until=2026-01-12')).orders).toEqual([])
    await owner.get(`/api/numbers?from=2026-01-12&until=2026-01-12&locationId=${randomUUID()}`).expect(404)
    const { body } = await owner.get('/api/numbers?from=yesterday&until=2026-01-12').expect(422)
    expect(body.fields).toMatchObject([{ field: 'from' }])
  })

  it('are not for those who write up and work', async () => {
    const advisor = await replay.as('ottoline', 'desk')
    await advisor.get('/api/numbers?from=2026-01-12&until=2026-01-12').expect(403)
  })

  it('are found by an index where there are ten thousand orders', async () => {
    const { pool } = shop.parts
    await pool.query(
      `insert into order_heads (shop_id, order_id, number, seq, hash, opened_at, location_id, customer_id, vehicle_id,
         waits_here, is_open, sealed, agenda, updated_at, ended_at, figures)
       select shop_id, gen_random_uuid(), 'Y-' || n, seq, hash, opened_at - n * interval '1 hour', location_id,
         customer_id, vehicle_id, waits_here, false, sealed, agenda, updated_at, ended_at - n * interval '1 hour', figures
       from order_heads, generate_series(1, 10000) n where order_id = $1`,
      [done],
    )
    const { rows } = await pool.query<Record<string, string>>(
      `explain select figures from order_heads where shop_id = $1 and ended_at >= $2 and ended_at < $3
         and figures is not null order by ended_at desc`,
      [shop.demo.shop.id, '2025-12-01T00:00:00Z', '2025-12-08T00:00:00Z'],
    )
    const plan = rows.map((row) => row['QUERY PLAN']).join('\n')
    expect(plan).toContain('order_heads__ended')
    expect((await numbers('?from=2025-12-01&until=2025-12-07')).orders).toHaveLength(7 * 24)
  })
})
