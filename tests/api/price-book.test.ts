import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import type { PriceBookContent } from '@bayledger/reckoning/money/price-book'
import { PriceList } from '@bayledger/reckoning/money/price-list'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { firstItems } from '../../prisma/seeds/first-items.ts'
import { type Caller, startTestApp, type TestApp } from '../support/app.ts'

let shop: TestApp
let owner: Caller
let path: string
beforeAll(async () => {
  shop = await startTestApp()
  owner = await shop.desk('marguerite')
  path = `/api/price-book/${shop.demo.shop.id}`
})
afterAll(() => shop.stop())

type Kept = { id: string; version: number; content: PriceBookContent; facts: object }
const kept = async (): Promise<Kept> => (await owner.get('/api/price-book').expect(200)).body.records[0]
const put = async (change: object, given: { version?: number; sure?: string[] } = {}) => {
  const { version, content } = await kept()
  const body = { content: { ...content, ...change }, ...(given.sure ? { sure: given.sure } : {}) }
  return owner.put(path, body, { 'if-match': `"${given.version ?? version}"` })
}
const fieldsOf = async (change: object) => {
  const { status, body } = await put(change)
  expect(status).toBe(422)
  return body.fields.map(({ field, allowed }: { field: string; allowed: string }) => [field, allowed])
}

describe('the price book', () => {
  it('is read in today’s form though it is stored in the first, which stays as it was written', async () => {
    const { id, version, content, facts } = await kept()
    expect({ id, version, facts }).toEqual({
      id: shop.demo.shop.id,
      version: 1,
      facts: { openEstimates: 0, inSeason: [] },
    })
    expect(content).toMatchObject({ laborCentsPerHour: 13_000, fees: [], discounts: [], seasons: [] })
    const { body } = await owner.get(path).expect(200)
    expect(body.history).toMatchObject([{ version: 1, by: null }])
    const { rows } = await shop.deps.pool.query(
      "select body from setting_versions where kind = 'prices' and version = 1",
    )
    expect(rows[0].body).toEqual({ ...firstPrices, items: firstItems })
    expect(PriceList.safeParse(rows[0].body).success).toBe(true)
  })

  it('becomes the shop’s own where its owner saves what came with the program, and stays that version then', async () => {
    const { version } = await kept()
    const saved = (await put({})).body
    expect(saved.version).toBe(version + 1)
    expect((await put({})).body.version).toBe(version + 1)
  })

  it('refuses a price of −1 and 0.25 hours, each with what is allowed', async () => {
    const { content } = await kept()
    expect(await fieldsOf({ laborCentsPerHour: -1 })).toEqual([
      ['content.laborCentsPerHour', 'an amount from 0.00 to 100,000.00'],
    ])
    expect(await fieldsOf({ hours: { ...content.hours, reset: 25 } })).toEqual([
      ['content.hours.reset', expect.stringContaining('0.25 lies between two tenths')],
    ])
  })

  it('asks about a tax of 60 %, and takes it from whoever says that it is right', async () => {
    const asked = await put({ taxRatePercentThousandths: 60_000 })
    expect([asked.status, asked.body.code]).toEqual([422, 'VALUE_DOUBTFUL'])
    expect(asked.body.fields).toMatchObject([{ field: 'taxRatePercentThousandths', found: '60 %' }])
    const before = (await kept()).version
    const saved = await put({ taxRatePercentThousandths: 60_000 }, { sure: ['taxRatePercentThousandths'] })
    expect(saved.body.version).toBe(before + 1)
    expect((await put({ taxRatePercentThousandths: 6_250 })).status).toBe(200)
  })

  it('hands both versions back where two owners edit one price, and saves the second over the first', async () => {
    const { version, content } = await kept()
    expect((await put({ laborCentsPerHour: 13_500 })).status).toBe(200)
    const stale = await put({ laborCentsPerHour: 14_000 }, { version })
    expect(stale.status).toBe(412)
    expect(stale.body).toMatchObject({
      code: 'VERSION_STALE',
      current: { version: version + 1, content: { laborCentsPerHour: 13_500 } },
      sent: { laborCentsPerHour: 14_000 },
    })
    expect((await put({ laborCentsPerHour: 14_000 })).body.version).toBe(version + 2)
    const { history } = (await owner.get(path).expect(200)).body
    expect(history[0]).toMatchObject({ by: 'Marguerite Ashby-Bell', content: { laborCentsPerHour: 14_000 } })
    expect(content.laborCentsPerHour).toBe(13_000)
  })

  it('lets one of five win', async () => {
    const { version } = await kept()
    const replies = await Promise.all(
      [1, 2, 3, 4, 5].map((cents) => put({ lowProfileAspect: 40 + cents }, { version })),
    )
    expect(replies.map(({ status }) => status).toSorted()).toEqual([200, 412, 412, 412, 412])
  })

  it('is what it was where nothing was changed', async () => {
    const { version } = await kept()
    expect((await put({})).body.version).toBe(version)
  })

  it('says which season it is where the shop is', async () => {
    const season = {
      key: 'frost',
      words: 'First frost',
      from: '01-12',
      to: '01-12',
      percentThousandths: 5_000,
    }
    const saved = await put({ seasons: [{ ...season, classes: ['labor'] }] })
    expect(saved.body.facts).toMatchObject({ inSeason: ['First frost'] })
    // Midnight where the shop is, five hours behind UTC in January.
    for (const [at, inSeason] of [
      ['2026-01-13T04:59:00.000Z', ['First frost']],
      ['2026-01-13T05:01:00.000Z', []],
    ] as const) {
      shop.clock.set(at)
      owner = await shop.desk('marguerite')
      expect((await kept()).facts).toMatchObject({ inSeason })
    }
  })

  it('is the owner’s and a manager’s, and nobody else’s', async () => {
    for (const person of ['ottoline', 'greta', 'rufus'] as const)
      await (await shop.desk(person)).get('/api/price-book').expect(403)
    await owner.get('/api/price-book/019b0000-0000-7000-8000-000000000000').expect(404)
  })

  it('raises what appending knows of discounts at once, in every process', async () => {
    const version = async () =>
      (await shop.deps.pool.query('select facts_version from shops')).rows[0].facts_version
    const before = await version()
    const { content } = await kept()
    expect((await put({ discountLimits: { ...content.discountLimits, advisor: 5_000 } })).status).toBe(200)
    expect(await version()).toBe(before + 1)
  })
})
