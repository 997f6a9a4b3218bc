import { randomUUID } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { type ExportKind, exports } from '@bayledger/contract/exports'
import { dueCents } from '@bayledger/ledger/questions/money'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, demoNow, startTestApp, type TestApp } from '../support/app.ts'
import { begunOrder } from '../support/begun-order.ts'
import { csvRows } from '../support/csv-rows.ts'
import { readOrder } from '../support/desk-order.ts'
import { freshLines } from '../support/fresh-copy.ts'
import { replayOn } from '../support/replay-order.ts'
import { workBegunOrder } from '../support/work-begun-order.ts'

/** What a spreadsheet program runs if a cell begins with it (OWASP, "CSV Injection"), in the texts of one customer and vehicle. */
const evil = {
  name: '=HYPERLINK("https://example.test","open")',
  phone: '+1 555 010 0199',
  description: '@SUM(1+1) a "quoted", name',
}

let shop: TestApp
let owner: Caller
let sold: string
let torqued: string
/** Opened half an hour after the first midnight, and half an hour before the second, of the day that summer time begins on. */
const shortDay = ['2026-03-08T05:30:00.000Z', '2026-03-09T03:30:00.000Z'] as const

const numbered = (number: string) => {
  const order = shop.demo.orders.find((one) => one.number === number)
  if (!order) throw new Error(`no order ${number} in the demo`)
  return order
}

const openAt = async (instant: string) => {
  const { lines } = freshLines(numbered('T-2602'))
  shop.clock.set(instant)
  // Sessions of months ago are over.
  await (await replayOn(shop)).sendUntil(lines.slice(0, 1))
}

beforeAll(async () => {
  shop = await startTestApp()
  const replay = await replayOn(shop)
  owner = await shop.desk('marguerite')
  const order = numbered('T-2605')
  const end = order.end
  if (!end) throw new Error('T-2605 is finished')
  const { orderId, lines } = freshLines({ orderId: order.orderId, lines: [...order.lines, end.handBack] })
  await replay.sendUntil(lines, ({ draft }) => draft.kind === 'order.handed_back')
  await owner.post(`/api/orders/${orderId}/reports`, { entryId: randomUUID() }).expect(201)
  await replay.sendUntil(lines.slice(-1))
  sold = orderId
  const { body } = await owner.get(`/api/orders/${orderId}`).expect(200)
  const { customerId, version, ...customer } = body.customer
  await owner
    .put(
      `/api/customers/${customerId}`,
      { ...customer, name: evil.name, phone: evil.phone },
      { 'if-match': `"${version}"` },
    )
    .expect(200)
  await shop.parts.prisma.vehicle.updateMany({
    where: { id: body.vehicle.vehicleId },
    data: { description: evil.description },
  })
  const begun = await begunOrder(shop, 'T-2603')
  await workBegunOrder(shop, begun, await begun.as('ines', 'bay'), ({ stepKey }) =>
    stepKey.endsWith('second-check'),
  )
  torqued = begun.orderId
  for (const instant of shortDay) await openAt(instant)
  shop.clock.set(demoNow)
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const kinds = Object.keys(exports) as ExportKind[]
const address = (kind: ExportKind, from = '2026-01-12', to = from) =>
  `/api/exports/${kind}.csv?from=${from}&to=${to}`
type Column = 'order' | 'at' | 'opened_at' | 'amount' | 'round' | 'wrench' | 'checked_by' | 'wheel' | 'figure'
const rowsOf = async (kind: ExportKind, from?: string, to?: string, by = owner) =>
  csvRows<Column>((await by.get(address(kind, from, to)).expect(200)).text)

describe.each(kinds)('the file of %s', (kind) => {
  it('has the columns that its page of the documentation names, in that order, and they alone in an empty range', async () => {
    const { text, headers } = await owner.get(address(kind, '2025-06-01', '2025-06-30')).expect(200)
    expect(headers['content-disposition']).toContain(`${kind}-2025-06-01-to-2025-06-30.csv`)
    const page = readFileSync(`${import.meta.dirname}/../../docs/csv.md`, 'utf8')
    const [, named = ''] = new RegExp(`^\\| \`${kind}\` \\|[^|]*\\| ([^|]+) \\|`, 'm').exec(page) ?? []
    expect(text).toBe(`\uFEFF${[...named.matchAll(/`([^`]+)`/g)].map(([, name]) => name).join(',')}\r\n`)
  })

  it('runs nothing in a spreadsheet, and is in the order of time', async () => {
    const rows = await rowsOf(kind)
    expect(rows.length).toBeGreaterThan(0)
    for (const cell of rows.flatMap((row) => Object.values(row)))
      if (/^[=+\-@\t\r]/.test(cell)) expect(cell).toMatch(/^[+-]?\d+(\.\d+)?$/)
    const times = rows.map((row) => Date.parse(row.at ?? row.opened_at))
    expect(times).toEqual(times.toSorted((one, other) => one - other))
  })

  it('is refused where its last day is before its first, or its place is not of this shop', async () => {
    const { body } = await owner.get(address(kind, '2026-01-12', '2026-01-11')).expect(422)
    expect(body.fields).toMatchObject([{ field: 'query.to', found: '2026-01-11' }])
    await owner.get(`${address(kind)}&locationId=${randomUUID()}`).expect(404)
  })
})

it('names customers to managers and the owner alone, as text', async () => {
  const [order] = await rowsOf('orders')
  expect(order).toMatchObject({
    customer: `'${evil.name}`,
    telephone: `'${evil.phone}`,
    vehicle: `'${evil.description}`,
    sealed: 'yes',
    open: 'no',
  })
  const [seen] = await rowsOf('orders', undefined, undefined, await shop.desk('ottoline'))
  expect(seen).toMatchObject({
    order: order?.order,
    customer: '',
    telephone: '',
    email: '',
    plate: '',
    vin: '',
  })
})

it('is for those whose work it is', async () => {
  const [advisor, technician] = [await shop.desk('ottoline'), await shop.desk('rufus')]
  const statuses = (by: Caller) =>
    Promise.all(kinds.map(async (kind) => [kind, (await by.get(address(kind))).status]))
  expect(Object.fromEntries(await statuses(advisor))).toEqual({
    ...{ orders: 200, readings: 403, torque: 403, parts: 200, sales: 403 },
  })
  expect(Object.fromEntries(await statuses(technician))).toEqual({
    ...{ orders: 403, readings: 200, torque: 200, parts: 403, sales: 403 },
  })
})

it('sells what was due, to the cent', async () => {
  const { state, money } = await readOrder(owner, sold)
  const rows = await rowsOf('sales')
  const cents = rows.map(({ amount }) => Math.round(Number(amount) * 100))
  expect(cents.reduce((sum, one) => sum + one, 0)).toBe(dueCents(state, money))
  expect(dueCents(state, money)).toBeGreaterThan(0)
})

it('has the torque of each round with its wheel, figure and wrench', async () => {
  const rows = await rowsOf('torque')
  const { body } = await owner.get(`/api/orders/${torqued}`).expect(200)
  const written = body.entries.filter(({ kind }: { kind: string }) =>
    /^(studs\.torqued|torque\.checked)$/.test(kind),
  )
  expect(rows).toHaveLength(written.length)
  expect(rows.map(({ wheel, figure }) => [wheel, Number(figure)])).toEqual(
    written.map(({ payload }: { payload: { wheel: string; figure: { value: number } } }) => [
      payload.wheel,
      payload.figure.value,
    ]),
  )
  expect(new Set(rows.map((row) => row.wrench))).toEqual(new Set(['W-07']))
})

it('has the whole day that summer time begins on, by the place’s clock, and no minute of the days beside it', async () => {
  expect((await rowsOf('orders', '2026-03-08')).map((row) => row.opened_at)).toEqual([
    '2026-03-08T00:30:01-05:00',
    '2026-03-08T23:30:01-04:00',
  ])
  expect(await rowsOf('orders', '2026-03-07')).toEqual([])
  expect(await rowsOf('orders', '2026-03-09')).toEqual([])
  expect(await rowsOf('orders', '2026-01-12', '2026-03-08')).toHaveLength(4)
})

it('goes through 10,000 orders', async () => {
  const copies = 10_000
  await shop.parts.pool.query(
    `insert into order_heads (shop_id, order_id, location_id, number, seq, hash, customer_id, vehicle_id, opened_at,
          waits_here, is_open, sealed, agenda, updated_at)
        select shop_id, gen_random_uuid(), location_id, 'X-' || n, seq, hash, customer_id, vehicle_id,
          '2024-05-06T12:00:00Z'::timestamptz + n * interval '1 second', false, true, false, agenda, updated_at
        from (select * from order_heads where order_id = $1) h, generate_series(1, ${copies}) n`,
    [sold],
  )
  const rows = await rowsOf('orders', '2024-05-06')
  expect(rows).toHaveLength(copies)
  expect(rows.at(-1)).toMatchObject({ order: `X-${copies}`, opened_at: '2024-05-06T10:46:40-04:00' })
})
