import { describe, expect, it } from 'vitest'
import type { EstimateLine } from '../estimate.ts'
import { discountLines, isOverLimit, limitOf } from './discount.ts'
import { feeLines } from './fees.ts'

const line = (
  code: EstimateLine['code'],
  taxClass: EstimateLine['taxClass'],
  unitCents: number,
  count = 1,
) => ({
  lineKey: `${code}.${taxClass}`,
  kind: 'labor' as const,
  code,
  words: null,
  wheels: [],
  sensor: null,
  priceCode: 'x',
  quantityHundredths: count * 100,
  unitCents,
  amountCents: unitCents * count,
  taxClass,
})
const work = [
  line('wheel-service', 'labor', 3_333),
  line('sensor', 'parts', 6_800, 2),
  line('tire', 'tire', 14_800, 3),
  line('tire-disposal', 'fee', 400),
]
const loyal = { key: 'loyal', words: 'Loyal customers', percentThousandths: 10_000, capCents: null }
const limits = { advisor: 0, lead: 5_000, manager: 10_000, owner: 100_000 }

// This program's own rule; rounding half up: common practice, no source.
describe('a discount', () => {
  it('is a line for each class that it is taken off, and takes nothing off fees', () => {
    expect(discountLines(work, loyal).map(({ taxClass, amountCents }) => [taxClass, amountCents])).toEqual([
      ['labor', -333],
      ['parts', -1_360],
      ['tire', -4_440],
    ])
  })

  it('ends at its cap', () => {
    const capped = discountLines(work, { ...loyal, capCents: 1_000 })
    expect(capped.map(({ taxClass, amountCents }) => [taxClass, amountCents])).toEqual([
      ['labor', -333],
      ['parts', -667],
    ])
  })

  it.each([
    [['advisor'], 0],
    [['technician'], 0],
    [['advisor', 'lead'], 5_000],
    [['owner'], 100_000],
  ])('of %o may be at most %i thousandths of a percent', (roles, limit) => {
    expect(limitOf(limits, roles)).toBe(limit)
  })

  it('is over a limit by one cent, and on it is not', () => {
    const lines = [...work, ...discountLines(work, loyal)]
    expect(isOverLimit(lines, 10_000)).toBe(false)
    expect(isOverLimit(lines, 9_970)).toBe(true)
    expect(isOverLimit(work, 0)).toBe(false)
  })
})

describe('a fee of the shop’s own', () => {
  const state = {
    key: 'state-tire',
    words: 'State tire fee',
    per: 'tire',
    cents: 150,
    capCents: null,
  } as const

  it('counts what it is for, in a line of its own with its own class', () => {
    expect(feeLines([{ ...state, taxClass: 'none' }], work)).toMatchObject([
      {
        words: 'State tire fee',
        quantityHundredths: 300,
        unitCents: 150,
        amountCents: 450,
        taxClass: 'none',
      },
    ])
    expect(feeLines([{ ...state, taxClass: 'none' }], [])).toEqual([])
  })

  it('ends at its cap as one line that is its own product', () => {
    expect(feeLines([{ ...state, taxClass: 'fee', capCents: 400 }], work)).toMatchObject([
      { quantityHundredths: 100, unitCents: 400, amountCents: 400 },
    ])
  })
})
