import { readFileSync, renameSync } from 'node:fs'
import { join } from 'node:path'
import { openPool } from '@bayledger/db/pool'
import { withClient } from '@bayledger/db/with-client'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { rebuildProjections } from '../../apps/api/src/features/entries/service/rebuild-projections.ts'
import { listEntriesAfter } from '../../apps/api/src/features/entries/store/read-ledger.ts'
import { freshCopy } from '../support/fresh-copy.ts'
import { type ProofBench, startProofBench } from '../support/proof-bench.ts'

/** What is counted with entries, what names an order from outside of it, and what only a digest finds. */
let bench: ProofBench
let orderId: string
let number: string
let coveredUpTo: number

beforeAll(async () => {
  bench = await startProofBench()
  const { replay, shop } = bench
  const order = freshCopy(shop.demo, 'T-2603')
  orderId = order.orderId
  await replay.sendUntil(order.lines.slice(0, 20))
  coveredUpTo = (await entries()).length
  await bench.makeDigest('2026-01-12')
  await replay.sendUntil(order.lines.slice(20))
  const desk = await replay.as('ottoline', 'desk')
  number = (await desk.get(`/api/orders/${orderId}`).expect(200)).body.number
})
afterAll(() => bench.stop())

/** The movements of the sensor; the kit that it was fitted with has its own. */
const ofSensor = "stock_item_id = (select id from stock_items where part_number = 'TS-315-C')"

const entries = () => listEntriesAfter(bench.pool, bench.shop.demo.shop.id, orderId, 0)
const seqOf = async (kind: string): Promise<number> =>
  (await entries()).find((entry) => entry.kind === kind)?.seq ?? 0

describe('what is counted with entries', () => {
  it('holds in a record that nobody touched', async () => {
    expect(await bench.found()).toEqual([])
  })

  it('is found where a movement of stock was changed, removed or added', async () => {
    const fault = `Order ${number}, entry ${await seqOf('part.drawn')} (part.drawn): the movements of stock differ from what its entries make`
    expect(
      await bench.altered(
        'stock_movements',
        `update stock_movements set quantity = quantity - 1 where ${ofSensor}`,
      ),
    ).toEqual([fault, onHand(2, 1)])
    expect(await bench.altered('stock_movements', `delete from stock_movements where ${ofSensor}`)).toEqual([
      fault,
      onHand(2, 3),
    ])
    const other = await seqOf('wheel.checked')
    expect(
      await bench.altered(
        'stock_movements',
        `insert into stock_movements (shop_id, entry_id, line, stock_item_id, quantity, kind)
         select m.shop_id, e.id, 0, m.stock_item_id, -1, 'drawn' from stock_movements m
         join entries e on e.order_id = $1 and e.seq = $2 where m.${ofSensor} limit 1`,
        [orderId, other],
      ),
    ).toEqual([
      `Order ${number}, entry ${other} (wheel.checked): the movements of stock differ from what its entries make`,
      onHand(2, 1),
    ])
  })

  it('is found where another part was drawn than the entry says', async () => {
    expect(
      await bench.altered(
        'stock_movements',
        `update stock_movements m set stock_item_id = (
           select id from stock_items s where s.id <> m.stock_item_id order by id limit 1) where m.${ofSensor}`,
      ),
    ).toEqual([
      expect.stringMatching(/the movements of stock differ/),
      expect.any(String),
      expect.any(String),
    ])
  })

  it('is found where a delivery was changed or the number on hand is another one, and a rebuild counts again', async () => {
    expect(
      await bench.altered(
        'stock_changes',
        `update stock_changes set quantity = quantity + 5
         where stock_item_id = (select id from stock_items where part_number = 'TS-315-C')`,
      ),
    ).toEqual([onHand(2, 7)])
    await withClient(bench.shop.ownerUrl, (client) =>
      client.query("update stock_items set on_hand = 40 where part_number = 'TS-315-C'"),
    )
    expect(await bench.found()).toEqual([onHand(40, 2)])
    await rebuilt()
    expect(await bench.found()).toEqual([])
  })

  it('lacks no movement of parts that were drawn before the shop listed them', async () => {
    const listedSince = (since: string) =>
      withClient(bench.shop.ownerUrl, (client) =>
        client.query(`update stock_items set created_at = '${since}'`),
      )
    await listedSince('2027-01-01')
    expect(await bench.found()).toEqual([])
    expect(await bench.altered('stock_movements', `delete from stock_movements where ${ofSensor}`)).toEqual([
      onHand(2, 3),
    ])
    await listedSince('1970-01-01')
  })

  it('is whole for kits that were fitted before they moved the stock: the migration moves them, and leaves what is on hand', async () => {
    const isKit = "stock_item_id = (select id from stock_items where part_number = 'TK-C')"
    await withClient(bench.shop.adminUrl, async (admin) => {
      const onHandNow = async () =>
        (await admin.query("select on_hand from stock_items where part_number = 'TK-C'")).rows
      await admin.query("set session_replication_role = 'replica'")
      await admin.query(`delete from stock_movements where ${isKit}`)
      await admin.query("update stock_items set on_hand = on_hand + 1 where part_number = 'TK-C'")
      const before = await onHandNow()
      expect(await bench.found()).not.toEqual([])
      await admin.query(
        readFileSync('prisma/migrations/20261129222500_kits_leave_shelves/migration.sql', 'utf8'),
      )
      expect(await bench.found()).toEqual([])
      expect(await onHandNow()).toEqual(before)
    })
  })

  it('is found where clicks of a wrench were added, and where a count names an entry that is not there', async () => {
    const seq = await seqOf('wheel.checked')
    expect(
      await bench.altered(
        'wrench_cycles',
        `insert into wrench_cycles (shop_id, entry_id, line, instrument_id, clicks)
         select e.shop_id, e.id, 0, i.id, 5 from entries e join instruments i on i.shop_id = e.shop_id
         where e.order_id = $1 and e.seq = $2 limit 1`,
        [orderId, seq],
      ),
    ).toEqual([
      `Order ${number}, entry ${seq} (wheel.checked): the clicks of a wrench differ from what its entries make`,
    ])
    const nobody = '00000000-0000-7000-8000-000000000000'
    expect(
      await bench.altered(
        'stock_movements',
        `insert into stock_movements (shop_id, entry_id, line, stock_item_id, quantity, kind)
         select shop_id, $1, 0, stock_item_id, -1, 'drawn' from stock_movements where ${ofSensor} limit 1`,
        [nobody],
      ),
    ).toEqual([`Entry ${nobody}: the movements of stock name it, and there is no such entry`, onHand(2, 1)])
  })
})

describe('what names an order', () => {
  it('is found where its number or its opening was changed, and a rebuild fixes both', async () => {
    for (const [change, field] of [
      ["number = 'T-1'", 'number'],
      ["opened_at = opened_at + interval '1 day'", 'openedAt'],
    ])
      expect(
        await bench.altered('order_heads', `update order_heads set ${change} where order_id = $1`, [orderId]),
      ).toEqual([expect.stringContaining(`the floor list shows another ${field} than its entries make`)])
    const before = (await bench.pool.query('select * from order_heads')).rows
    await withClient(bench.shop.ownerUrl, (owner) =>
      owner.query("update order_heads set number = 'T-1', opened_at = opened_at + interval '1 day'"),
    )
    await rebuilt()
    expect((await bench.pool.query('select * from order_heads')).rows).toEqual(before)
  })

  it('is found where its head was removed', async () => {
    expect(
      await bench.altered('order_heads', 'delete from order_heads where order_id = $1', [orderId]),
    ).toEqual([`Order ${number}: it has entries and no head`])
  })

  it('is found where its whole shop was taken off the list, or the database was emptied', async () => {
    const shopId = bench.shop.demo.shop.id
    const lines = await bench.altered('shops', 'delete from shops')
    expect(lines).toEqual([`Shop ${shopId}: there are entries of it, and the database does not list it`])
    const digests = join(bench.folder, 'digests')
    const elsewhere = '00000000-0000-4000-8000-000000000000'
    renameSync(join(digests, shopId), join(digests, elsewhere))
    try {
      expect(await bench.found()).toContain(
        `Shop ${elsewhere}: there are digests of it, and the database does not list it`,
      )
    } finally {
      renameSync(join(digests, elsewhere), join(digests, shopId))
    }
  })
})

describe('an order that was cut off at its end, its projections rebuilt', () => {
  it('is found by nothing but a digest: entries that none covers can go unseen, and verifying counts how many there are', async () => {
    const whole = (await entries()).length
    expect(await bench.verified()).toMatchObject({ uncovered: whole - coveredUpTo, faults: [] })
    await cutAfter(whole - 2)
    expect(await bench.verified()).toMatchObject({ uncovered: whole - coveredUpTo - 2, faults: [] })
    await bench.makeDigest('2026-01-13')
    expect(await bench.verified()).toMatchObject({ uncovered: 0, faults: [] })
    await cutAfter(whole - 4)
    expect(await bench.found()).toEqual([
      expect.stringContaining(
        `Order ${number}, entry ${whole - 2}: the digest covers it, and it is not in the database any more`,
      ),
    ])
  })
})

const onHand = (listed: number, moved: number): string =>
  `Part TS-315-C at Tamber Street: the list says ${listed} on hand and its movements make ${moved}; npm run projections:rebuild`

const rebuilt = async (): Promise<void> => {
  const pool = openPool({ url: bench.shop.ownerUrl, size: 1, onIdleError: () => undefined })
  await rebuildProjections({ pool, shopId: bench.shop.demo.shop.id }).finally(() => pool.end())
}

/** Removes what came later, with whatever counts it, and lets the projections say that it never was. */
const cutAfter = async (seq: number): Promise<void> => {
  await withClient(bench.shop.adminUrl, async (admin) => {
    await admin.query("set session_replication_role = 'replica'")
    for (const table of ['stock_movements', 'wrench_cycles', 'seen_sensors'])
      await admin.query(
        `delete from ${table} where entry_id in (select id from entries where order_id = $1 and seq > $2)`,
        [orderId, seq],
      )
    await admin.query('delete from entries where order_id = $1 and seq > $2', [orderId, seq])
  })
  await rebuilt()
}
