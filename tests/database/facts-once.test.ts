import { randomUUID } from 'node:crypto'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
beforeAll(async () => {
  shop = await startTestApp()
})
afterAll(() => shop.stop())

/** By how much a statement raises the version of the shop's facts. */
const raisedBy = (sql: string, values: unknown[] = []): Promise<number> =>
  withClient(shop.ownerUrl, async (client) => {
    const version = async (): Promise<number> =>
      (await client.query('select facts_version as version from shops where id = $1', [shop.demo.shop.id]))
        .rows[0].version
    const before = await version()
    await client.query(sql, values)
    return (await version()) - before
  })

describe('the version of what appending has to know of a shop', () => {
  it('rises once for a statement, however many rows it writes', async () => {
    const added = `insert into stock_items (shop_id, id, version, part_number, location_id, family, created_at)
      select s.shop_id, gen_random_uuid(), 1, 'X-' || n, s.location_id, s.family, now()
      from (select * from stock_items where shop_id = $1 limit 1) s, generate_series(1, 500) n`
    expect(await raisedBy(added, [shop.demo.shop.id])).toBe(1)
    expect(
      await raisedBy(`update stock_items set part_number = part_number || 'b' where part_number like 'X-%'`),
    ).toBe(1)
    expect(await raisedBy(`delete from stock_items where part_number like 'X-%'`)).toBe(1)
  })

  it.each([
    ['staff', 'active = active', 0],
    ['staff', `name = name || ' the Second'`, 0],
    ['staff', `roles = array_append(roles, 'advisor') where sign_in_name = 'bo'`, 1],
    ['instruments', 'cycles = cycles + 1', 0],
    ['instruments', 'quarantined = not quarantined', 1],
    ['stock_items', 'on_hand = on_hand + 1', 0],
    ['locations', 'bays = bays + 1', 0],
    ['locations', `law_profile = '{"secondPersonForTorque": false}'`, 1],
  ])('%s: %s raises it by %i', async (table, change, raised) => {
    expect(await raisedBy(`update ${table} set ${change}`)).toBe(raised)
  })

  it('does not rise where a statement meets no row', async () => {
    expect(await raisedBy('delete from stock_items where id = $1', [randomUUID()])).toBe(0)
  })
})
