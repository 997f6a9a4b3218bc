import { describe, expect, it } from 'vitest'
import type { EstimateLine } from '../estimate.ts'
import { demoPrices as prices } from './demo-prices.test-support.ts'
import { isOverLimit } from './discount.ts'
import { estimateChanges } from './estimate-changes.ts'
import { type HandLine, handBundle } from './hand-bundles.ts'
import { lineDiscountsIn } from './line-discounts.ts'
import { offeredAgain, priceEstimate } from './price-estimate.ts'
import { totalsAreRight } from './totals.ts'

const wheel: HandLine = {
  bundleKey: 'hand.1',
  kind: 'part',
  words: 'Reconditioned wheel',
  itemKey: 'exchange-wheel',
  quantityHundredths: 200,
  unitCents: 18_500,
  wheels: [],
  depositCents: 6_000,
  oldPartIsHere: false,
}
const straightening: HandLine = {
  ...wheel,
  bundleKey: 'hand.2',
  kind: 'outside',
  words: 'Straighten a wheel',
  itemKey: null,
  quantityHundredths: 100,
  unitCents: 12_500,
  depositCents: null,
}
const priced = (lines: readonly HandLine[], more: Partial<Parameters<typeof priceEstimate>[0]> = {}) =>
  priceEstimate({ bundles: lines.map(handBundle), prices, revision: 1, readyAt: null, ...more })
const amounts = (lines: readonly EstimateLine[] = []) =>
  lines.map(({ lineKey, amountCents, taxClass }) => [lineKey, amountCents, taxClass])

describe('a line by hand', () => {
  it('is a decision of its own, with its deposit as a line that is not taxed', () => {
    const [bundle] = priced([wheel]).bundles
    expect(bundle).toMatchObject({ title: 'by-hand', works: [] })
    expect(amounts(bundle?.money.lines)).toEqual([
      ['item', 37_000, 'parts'],
      ['deposit', 12_000, 'none'],
    ])
    // 6.25 % of 370.00 is 23.125, rounded up.
    expect(bundle?.money.totals).toEqual({ beforeTaxCents: 49_000, taxCents: 2_313, totalCents: 51_313 })
  })

  it('gives the deposit back at once where the old part is here, and never more than was charged', () => {
    const lines = priced([{ ...wheel, oldPartIsHere: true }]).bundles[0]?.money.lines ?? []
    expect(amounts(lines).slice(1)).toEqual([
      ['deposit', 12_000, 'none'],
      ['deposit-returned', -12_000, 'none'],
    ])
    expect(isOverLimit(lines, 0)).toBe(false)
    expect(
      isOverLimit(
        lines.filter(({ lineKey }) => lineKey !== 'deposit'),
        100_000,
      ),
    ).toBe(true)
  })

  it('names work of another shop as such, taxed as labor, with its supplies', () => {
    const [bundle] = priced([straightening]).bundles
    expect(bundle?.title).toBe('outside-work')
    expect(amounts(bundle?.money.lines)[0]).toEqual(['item', 12_500, 'labor'])
  })

  it('has no tax for a customer who is exempt, and the estimate says by which certificate', () => {
    const estimate = priced([wheel], { exemption: 'EX-204' })
    expect(estimate.money).toMatchObject({ taxRatePercentThousandths: 0, exemption: 'EX-204' })
    expect(estimate.money.totals).toEqual({ beforeTaxCents: 49_000, taxCents: 0, totalCents: 49_000 })
    expect(totalsAreRight(estimate)).toBe(true)
  })

  it('takes a discount with its tax, at most the line itself, and the next version keeps it', () => {
    const off = { bundleKey: 'hand.1', lineKey: 'item', reason: 'Scratched', cents: 5_000 }
    const [bundle] = priced([wheel], { lineDiscounts: [off] }).bundles
    expect(amounts(bundle?.money.lines)).toContainEqual(['discount.line.item', -5_000, 'parts'])
    expect(bundle?.money.totals.taxCents).toBe(2_000)
    expect(lineDiscountsIn('hand.1', bundle?.money.lines ?? [])).toEqual([off])
    expect(isOverLimit(bundle?.money.lines ?? [], 10_000)).toBe(true)
    expect(isOverLimit(bundle?.money.lines ?? [], 14_000)).toBe(false)
    const [free] = priced([wheel], { lineDiscounts: [{ ...off, cents: 90_000 }] }).bundles
    expect(free?.money.totals.totalCents).toBe(12_000)
    const none = priced([wheel], { lineDiscounts: [{ ...off, lineKey: 'deposit' }] })
    expect(none.money.totals).toEqual(priced([wheel]).money.totals)
  })

  it('is offered again without what pricing adds', () => {
    const [bundle] = priced([straightening]).bundles
    expect(bundle && offeredAgain(bundle).lines.map(({ lineKey }) => lineKey)).toEqual(['item'])
  })
})

describe('the differences between two versions', () => {
  it('name what is new, left out or of another price, line by line, and nothing that is the same', () => {
    const before = priced([wheel, straightening]).bundles
    const after = priced([
      { ...wheel, quantityHundredths: 100 },
      { ...straightening, bundleKey: 'hand.3', words: 'Weld a wheel' },
    ]).bundles
    expect(
      estimateChanges(before, after).map(({ change, bundle, lines }) => [
        change,
        bundle.bundleKey,
        lines.map(({ line, beforeCents, afterCents }) => [line.lineKey, beforeCents, afterCents]),
      ]),
    ).toEqual([
      [
        'changed',
        'hand.1',
        [
          ['item', 37_000, 18_500],
          ['deposit', 12_000, 6_000],
        ],
      ],
      ['added', 'hand.3', expect.arrayContaining([['item', null, 12_500]])],
      ['removed', 'hand.2', []],
    ])
    expect(estimateChanges(before, before)).toEqual([])
  })

  it('name what is offered in place of another now, though no price is another', () => {
    const [one, other] = priced([wheel, straightening]).bundles
    if (!one || !other) throw new RangeError('two bundles were priced')
    const instead = { ...other, alternativeTo: one.bundleKey }
    expect(estimateChanges([one, other], [one, instead])).toMatchObject([
      {
        change: 'changed',
        bundle: { bundleKey: 'hand.2' },
        lines: [],
        inPlaceOf: { before: null, after: 'hand.1' },
      },
    ])
    expect(estimateChanges([one, instead], [one, other])).toMatchObject([
      { inPlaceOf: { before: 'hand.1', after: null } },
    ])
  })
})
