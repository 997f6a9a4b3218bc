import { randomUUID } from 'node:crypto'
import type { CsvPreview } from '@bayledger/contract/csv'
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
const exported = async (): Promise<string> => (await owner.get('/api/price-book.csv').expect(200)).text
const preview = async (text: string): Promise<CsvPreview> =>
  (await owner.call('post', '/api/price-book/import/preview', file).send(Buffer.from(text)).expect(200)).body
const apply = (text: string, digest: string) =>
  owner
    .call('post', `/api/price-book/import?digest=${digest}&refused=leave-out`, {
      ...file,
      'idempotency-key': randomUUID(),
    })
    .send(Buffer.from(text))
const kept = async () => (await owner.get('/api/price-book').expect(200)).body.records[0]
const withLines = async (lines: Readonly<Record<string, string>>, added: readonly string[] = []) => {
  const [header = '', ...rows] = (await exported()).trimEnd().split('\r\n')
  const changed = rows.map((row) => lines[row.split(',')[0] ?? ''] ?? row)
  return [header, ...changed, ...added].join('\r\n')
}

describe('the price book as CSV', () => {
  it('comes back as the same, and is the same version then', async () => {
    const { counts, digest } = await preview(await exported())
    expect(counts).toMatchObject({ added: 0, changed: 0, refused: 0 })
    await apply(await exported(), digest).expect(200)
    expect((await kept()).version).toBe(1)
  })

  it('refuses a price of −1, 0.25 hours, a tax of 60 % and an unknown item, each with what to do', async () => {
    const text = await withLines(
      {
        'labor-hour': 'labor-hour,-1,$,,,,,,,,,,',
        'hours.reset': 'hours.reset,0.25,h,,,,,,,,,,',
        tax: 'tax,60,%,,,,,,,,,,',
      },
      ['prices.engine,900,$,,,,,,,,,,'],
    )
    const { refused, counts } = await preview(text)
    expect(counts).toMatchObject({ added: 0, changed: 0, refused: 4 })
    expect(refused.map(({ name, faults }) => [name, faults[0]?.column, faults[0]?.reason])).toEqual([
      ['labor-hour', 'value', expect.stringContaining('an amount from 0.00')],
      ['hours.reset', 'value', expect.stringContaining('0.25 lies between two tenths')],
      ['tax', 'value', expect.stringContaining('usual is 0 to 15 %')],
      ['prices.engine', 'item', 'The price book has no such item.'],
    ])
  })

  it('writes changed prices, a fee and a season as one version with who', async () => {
    const text = await withLines(
      { 'labor-hour': 'labor-hour,135.5,$,,,,,,,,,,', 'prices.tire': 'prices.tire,,$,,,,,,,,,,' },
      [
        'fees.state-tire,1.5,$,State tire fee,,tire,none,,,,,,',
        'seasons.winter,10,%,Winter weeks,,,,11-15,01-31,labor; tire,,,',
      ],
    )
    const shown = await preview(text)
    expect(shown.counts).toMatchObject({ added: 2, changed: 2, refused: 0 })
    await apply(text, shown.digest).expect(200)
    expect(await kept()).toMatchObject({
      version: 2,
      content: {
        laborCentsPerHour: 13_550,
        prices: { tire: null },
        fees: [{ key: 'state-tire', cents: 150, per: 'tire', taxClass: 'none', capCents: null }],
        seasons: [{ key: 'winter', from: '11-15', classes: ['labor', 'tire'], percentThousandths: 10_000 }],
      },
      facts: { inSeason: ['Winter weeks'] },
    })
    expect((await preview(await exported())).counts).toMatchObject({ added: 0, changed: 0, refused: 0 })
    expect((await apply(text, shown.digest)).body.code).toBe('CSV_PREVIEW_STALE')
    const { history } = (await owner.get(`/api/price-book/${shop.demo.shop.id}`).expect(200)).body
    expect(history[0]).toMatchObject({ version: 2, by: 'Marguerite Ashby-Bell' })
  })
})
