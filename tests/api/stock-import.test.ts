import { randomUUID } from 'node:crypto'
import type { CsvPreview, CsvProgress } from '@bayledger/contract/csv'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
})
afterAll(() => shop.stop())

const file = { 'content-type': 'application/octet-stream' }
const exported = async (): Promise<string> => (await owner.get('/api/stock.csv').expect(200)).text
const preview = async (text: string): Promise<CsvPreview> =>
  (await owner.call('post', '/api/stock/import/preview', file).send(Buffer.from(text)).expect(200)).body
const apply = (text: string, digest: string, refused: 'leave-out' | 'stop' = 'leave-out') =>
  owner
    .call('post', `/api/stock/import?digest=${digest}&refused=${refused}`, {
      ...file,
      'idempotency-key': randomUUID(),
    })
    .send(Buffer.from(text))
const line = async (partNumber: string) =>
  (await owner.get('/api/stock/items').expect(200)).body.records.find(
    ({ content }: { content: { partNumber: string } }) => content.partNumber === partNumber,
  )

describe('the stock lists as CSV', () => {
  it('come back as the same', async () => {
    const { counts } = await preview(await exported())
    expect(counts).toEqual({ added: 0, changed: 0, same: shop.demo.stock.length, refused: 0 })
  })

  it('change a line, count another, add 200 and refuse 6 with what to do, in one transaction', async () => {
    const text = await exported()
    const [header = '', ...lines] = text.trimEnd().split('\r\n')
    const changed = lines
      .map((one) =>
        one.includes(',TK-C,') ? one.replace('Service kit, clamp-in', 'Kit for metal stems') : one,
      )
      .map((one) => (one.includes(',TK-S,') ? one.replace(',31,', ',28,') : one))
    const added = Array.from(
      { length: 206 },
      (_, index) =>
        `${index % 35 === 0 ? 'Elsewhere' : 'Millrace Road'},NEW-${index},kit,Kit ${index},${index % 3},,,,,,,,,,,,,,`,
    )
    const whole = [header, ...changed, ...added].join('\r\n')
    const shown = await preview(whole)
    expect(shown.counts).toEqual({ added: 200, changed: 2, same: lines.length - 2, refused: 6 })
    expect(shown.refused[0]?.faults).toMatchObject([
      { column: 'place', found: 'Elsewhere', do: expect.stringContaining('Tamber Street') },
    ])
    expect((await apply(whole, shown.digest, 'stop')).body.code).toBe('CSV_ROWS_REFUSED')
    expect((await apply(whole, shown.digest)).body).toEqual(shown.counts)
    expect(await line('TK-C')).toMatchObject({ version: 2, content: { words: 'Kit for metal stems' } })
    expect(await line('TK-S')).toMatchObject({ version: 1, facts: { onHand: 28 } })
    expect(await line('NEW-1')).toMatchObject({ version: 1, facts: { onHand: 1 } })
    const { id } = await line('TK-S')
    const { changes } = (await owner.get(`/api/stock/items/${id}/changes`).expect(200)).body
    expect(changes[0]).toMatchObject({ kind: 'counted', quantity: -3, by: 'Marguerite Ashby-Bell' })
    const { history } = (await owner.get(`/api/stock/items/${(await line('TK-C')).id}`).expect(200)).body
    expect(history.map(({ by }: { by: string | null }) => by)).toEqual(['Marguerite Ashby-Bell', null])
    expect((await preview(await exported())).counts.same).toBe(lines.length + 200)
    expect((await apply(whole, shown.digest)).body.code).toBe('CSV_PREVIEW_STALE')
  })

  it('are on hand as often as their movements say', async () => {
    const { rows } = await shop.deps.pool.query(
      `select part_number from stock_items s where on_hand <> (
         select coalesce(sum(quantity), 0) from stock_changes where stock_item_id = s.id)`,
    )
    expect(rows).toEqual([])
  })

  it('say how far they have come while they are compared and written, and to nobody afterwards', async () => {
    const text = (await exported()).trimEnd()
    const added = Array.from(
      { length: 2_000 },
      (_, index) => `Millrace Road,MANY-${index},kit,Kit ${index},1,,,,,,,,,,,,,,`,
    )
    const body = Buffer.from([text, ...added].join('\r\n'))
    const all = body.toString().split('\r\n').length - 1
    const watch = randomUUID()
    const progress = async () => (await owner.get(`/api/imports/${watch}`).expect(200)).body.progress
    const watching = async (path: string) => {
      const told: CsvProgress[] = []
      let isOver = false
      const importing = owner
        .call('post', `${path}watch=${watch}`, { ...file, 'idempotency-key': randomUUID() })
        .send(body)
        .expect(200)
        .then((reply) => {
          isOver = true
          return reply.body
        })
      while (!isOver) {
        const now = await progress()
        if (now !== null) told.push(now)
      }
      return { told, reply: await importing }
    }
    const shown = await watching('/api/stock/import/preview?')
    expect(shown.told.length).toBeGreaterThan(0)
    for (const one of shown.told) expect(one).toMatchObject({ step: 'comparing', of: all })
    const done = shown.told.map((one) => one.done)
    expect(done).toEqual(done.toSorted((one, other) => one - other))
    expect(await progress()).toBeNull()

    const { digest } = shown.reply
    const { told, reply } = await watching(`/api/stock/import?digest=${digest}&refused=stop&`)
    expect(reply.added).toBe(2_000)
    expect(told.at(-1)).toMatchObject({ step: 'writing', of: 2_000 })
    expect(await progress()).toBeNull()
  })

  it('are no advisor’s to import', async () => {
    const advisor = await shop.desk('ottoline')
    await advisor.get('/api/stock.csv').expect(403)
  })
})
