import { describe, expect, it } from 'vitest'
import { firstPrices } from './first-prices.ts'
import { PriceBookContent, pricesOn, readPriceBook, seasonsOn } from './price-book.ts'
import { PriceList } from './price-list.ts'

const read = readPriceBook(firstPrices)
if (read === null) throw new Error('the first prices can be read')
const book = read
const { form: _form, version: _version, ...content } = book
const winter = {
  key: 'winter',
  words: 'Winter weeks',
  from: '11-15',
  to: '01-31',
  classes: ['labor' as const],
  percentThousandths: 10_000,
}
const faultsOf = (change: object) =>
  (PriceBookContent.safeParse({ ...content, ...change }).error?.issues ?? []).map(({ path, message }) => [
    path.join('.'),
    message,
  ])

describe('a price book', () => {
  it('reads the first form of the prices and gives the same prices back, without rewriting it', () => {
    const { tire: _tire, tireDisposal: _disposal, ...without } = firstPrices.prices
    const old = { ...firstPrices, prices: without }
    const again = readPriceBook(old)
    expect(again).toMatchObject({ form: 3, version: 1, fees: [], seasons: [], prices: { tire: null } })
    expect(again && pricesOn(again, '2026-01-12')).toEqual({ ...old, fees: [], items: [] })
    expect(PriceList.safeParse(old).success).toBe(true)
    expect(readPriceBook(book)).toEqual(book)
    expect(readPriceBook({ form: 3 })).toBeNull()
  })

  it.each([
    [{ laborCentsPerHour: -1 }, 'laborCentsPerHour', 'an amount from 0.00 to 100,000.00'],
    [
      { hours: { ...content.hours, reset: 25 } },
      'hours.reset',
      'hours in whole tenths from 0 to 100, as 0.3; 0.25 lies between two tenths',
    ],
    [{ prices: { ...content.prices, tire: 0.5 } }, 'prices.tire', 'an amount from 0.00 to 100,000.00'],
    [{ taxRatePercentThousandths: 100_001 }, 'taxRatePercentThousandths', '0 to 100 %, to a thousandth'],
    [{ seasons: [winter, winter] }, 'seasons', 'each key once'],
    [{ seasons: [{ ...winter, from: '13-01' }] }, 'seasons.0.from', 'a month and a day, as 11-15'],
    [
      { discounts: [{ key: 'All', words: 'All', percentThousandths: 1, capCents: null }] },
      'discounts.0.key',
      'small letters, digits and hyphens, as state-tire-fee',
    ],
  ])('refuses %o with what is allowed', (change, field, allowed) => {
    expect(faultsOf(change)).toEqual([[field, allowed]])
  })
})

describe('the second form', () => {
  it('is read as a book that sells neither what a customer asks for nor items', () => {
    const now = readPriceBook(firstPrices)
    if (now === null) throw new RangeError('the first prices can be read')
    const { items: _items, ...rest } = now
    const { look, relearnFirst, relearnEachMore, reset } = now.hours
    const second = { ...rest, form: 2, hours: { look, relearnFirst, relearnEachMore, reset } }
    expect(readPriceBook(second)).toMatchObject({
      form: 3,
      hours: { look, rotation: null, season: null, torqueAgain: null, spare: null, pressures: null },
      items: [],
    })
    expect(pricesOn({ ...now, items: [] }, '2026-01-12').hours).toEqual(firstPrices.hours)
    expect(readPriceBook({ ...second, items: [] })).toBeNull()
  })

  it('names a size for a tire and for nothing else', () => {
    const now = readPriceBook(firstPrices)
    const item = { key: 'one', words: 'One', kind: 'part', size: '225/65R17', cents: 1, depositCents: null }
    expect(readPriceBook({ ...now, items: [item] })).toBeNull()
    expect(readPriceBook({ ...now, items: [{ ...item, size: null }] })).not.toBeNull()
    expect(readPriceBook({ ...now, items: [{ ...item, kind: 'tire', size: null }] })).toBeNull()
  })
})

describe('a season', () => {
  it.each([
    ['2026-01-12', true],
    ['2025-11-15', true],
    ['2026-01-31', true],
    ['2026-02-01', false],
    ['2025-11-14', false],
  ])('over the end of the year: %s lies in it is %s', (day, isIn) => {
    expect(seasonsOn({ seasons: [winter] }, day)).toEqual(isIn ? [winter] : [])
  })

  it('changes the prices of its classes and no others, to the cent', () => {
    const cold = pricesOn({ ...book, seasons: [winter] }, '2026-01-12')
    expect(cold.laborCentsPerHour).toBe(14_300)
    expect(cold.prices).toEqual({
      ...pricesOn(book, '2026-01-12').prices,
      wheelService: 3_520,
      wheelServiceLowProfile: 3_960,
      repairLabor: 4_180,
      punctureLabor: 1_320,
      fastenerLabor: 4_950,
    })
    expect(pricesOn({ ...book, seasons: [winter] }, '2026-06-01')).toEqual(pricesOn(book, '2026-06-01'))
  })
})
