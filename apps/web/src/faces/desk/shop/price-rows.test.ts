import { firstPrices } from '@bayledger/reckoning/money/first-prices'
import { PriceBookContent, readPriceBook } from '@bayledger/reckoning/money/price-book'
import { describe, expect, it } from 'vitest'
import { recordFaultsOf } from '../../../ui/record/record-rows.ts'
import { priceContent, priceRows, priceValues } from './price-rows.ts'

const read = readPriceBook(firstPrices)
if (read === null) throw new Error('the first prices can be read')
const { form: _form, version: _version, ...first } = read
const full: PriceBookContent = {
  ...first,
  prices: { ...first.prices, tire: null },
  taxRatePercentThousandths: 6_255,
  fees: [
    { key: 'state-tire', words: 'State tire fee', per: 'tire', cents: 150, capCents: null, taxClass: 'none' },
  ],
  discounts: [{ key: 'loyal', words: 'Loyal', percentThousandths: 12_500, capCents: 5_000 }],
  seasons: [
    {
      key: 'winter',
      words: 'Winter',
      from: '11-15',
      to: '01-31',
      classes: ['labor', 'tire'],
      percentThousandths: -2_500,
    },
  ],
}
const faultsOf = (change: Record<string, string>) => {
  const values = { ...priceValues(full), ...change }
  return recordFaultsOf(priceRows(values), values)
}

describe('the price book as rows', () => {
  it.each([first, full])('comes back as it was, and is what the server takes', (content) => {
    const values = priceValues(content)
    expect(recordFaultsOf(priceRows(values), values)).toEqual({})
    expect(priceContent(values)).toEqual(content)
    expect(PriceBookContent.safeParse(priceContent(values)).success).toBe(true)
  })

  it.each([
    ['laborCentsPerHour', '-1', '-1 $ cannot be: allowed is 0 to 100000 $. Read it again.'],
    ['hours.reset', '0.25', 'Keep it to 1 decimal.'],
    ['taxRatePercentThousandths', '6.2555', 'Keep it to 3 decimals.'],
    ['seasons.0.from', '15 November', 'Type a month and a day, as 11-15.'],
    ['fees.0.cents', '', 'Fill this in.'],
  ])('says at the row %s what is wrong with "%s"', (key, value, fault) => {
    expect(faultsOf({ [key]: value })).toEqual({ [key]: fault })
  })

  it('takes a new fee under a key of its words, and leaves out one whose words are emptied', () => {
    const fee = { per: 'wheel', cents: '2.00', capCents: '8.00', taxClass: 'fee' }
    const typed = Object.fromEntries(
      Object.entries({ words: 'State tire', ...fee }).map(([key, value]) => [`fees.1.${key}`, value]),
    )
    const values = { ...priceValues(full), ...typed, 'discounts.0.words': ' ' }
    expect(recordFaultsOf(priceRows(values), values)).toEqual({})
    const { fees, discounts } = priceContent(values)
    expect(fees.map(({ key, cents, capCents }) => [key, cents, capCents])).toEqual([
      ['state-tire', 150, null],
      ['state-tire-2', 200, 800],
    ])
    expect(discounts).toEqual([])
  })
})
