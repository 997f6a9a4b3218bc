import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { rebuildProjections } from '../../apps/api/src/features/entries/service/rebuild-projections.ts'
import { startTestApp, type TestApp } from '../support/app.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  for (const number of ['T-2601', 'T-2602', 'T-2603', 'T-2613'])
    await replay.sendUntil(freshCopy(shop.demo, number).lines)
})
afterAll(() => shop.stop())

const projected = async () => {
  const read = async (text: string) => (await shop.deps.pool.query(text)).rows
  return {
    heads: await read('select * from order_heads order by order_id'),
    sensors: await read('select * from seen_sensors order by entry_id'),
    reports: await read('select * from sealed_reports order by number'),
  }
}

describe('what entries can rebuild', () => {
  it('is after a rebuild what it was before, whatever was there in between', async () => {
    const before = await projected()
    expect(before.sensors.length).toBeGreaterThan(8)
    await withClient(shop.ownerUrl, async (owner) => {
      await owner.query(
        `update order_heads set seq = seq + 1, hash = repeat('a', 64), agenda = '[]', is_open = false, sealed = true,
          assigned_to = null, updated_at = now(), ended_at = now()`,
      )
      await owner.query('delete from seen_sensors')
    })
    const pool = openPool({ url: shop.ownerUrl, size: 1, onIdleError: () => undefined })
    expect(await rebuildProjections({ pool, shopId: shop.demo.shop.id }).finally(() => pool.end())).toBe(4)
    expect(await projected()).toEqual(before)
  })

  it('is not made of an order with an altered entry, and stays as it was', async () => {
    const before = await projected()
    const change = (sign: '+' | '-') =>
      withClient(shop.adminUrl, async (admin) => {
        await admin.query("set session_replication_role = 'replica'")
        await admin.query(
          `update entries set written_at = written_at ${sign} interval '1 second' where seq = 5`,
        )
      })
    await change('+')
    await expect(rebuildProjections({ pool: shop.deps.pool, shopId: shop.demo.shop.id })).rejects.toThrow(
      /^Order .*: Entry 5 of this order does not match its seal.* Nothing of it was changed\.$/,
    )
    expect(await projected()).toEqual(before)
    await change('-')
  })

  it('holds as many clicks and parts as the entries that count them', async () => {
    const { rows } = await shop.deps.pool.query(`
      select
        (select coalesce(sum(clicks), 0) from wrench_cycles)::int as counted,
        (select coalesce(sum((payload ->> 'clicked')::int), 0) from entries
          where kind in ('studs.torqued', 'torque.checked'))::int as clicked,
        (select coalesce(sum(-quantity), 0) from stock_movements)::int as moved,
        (select coalesce(sum((payload ->> 'quantity')::int), 0) from entries where kind = 'part.drawn')::int as drawn,
        (select count(*) from entries where kind = 'sensor.fitted')::int as kits`)
    expect(rows[0].counted).toBe(rows[0].clicked)
    expect(rows[0].moved).toBe(rows[0].drawn + rows[0].kits)
    expect(rows[0].kits).toBeGreaterThan(0)
    expect(rows[0].drawn).toBeGreaterThan(0)
  })
})
