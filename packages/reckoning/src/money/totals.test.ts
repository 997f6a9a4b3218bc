import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { EstimateLine, PricedBundle, PricedEstimate, Totals } from '../estimate.ts'
import { taxCents } from './cents.ts'
import { totalsAreRight, totalsOfBundles, totalsOfLines } from './totals.ts'

const line = (amountCents: number, taxClass: EstimateLine['taxClass'] = 'parts'): EstimateLine => ({
  lineKey: 'line',
  kind: amountCents < 0 ? 'discount' : 'part',
  code: null,
  words: 'A line',
  wheels: [],
  sensor: null,
  priceCode: 'line',
  quantityHundredths: 100,
  unitCents: amountCents,
  amountCents,
  taxClass,
})
const partsOnly = { taxRatePercentThousandths: 7_250, taxedClasses: ['parts'] } as const

describe('totals', () => {
  it('tax only the classes that the place taxes', () => {
    const lines = [line(1_000), line(5_000, 'labor'), line(200, 'fee')]
    expect(totalsOfLines(lines, { ...partsOnly, taxBasis: 'line' })).toEqual({
      beforeTaxCents: 6_200,
      taxCents: 73,
      totalCents: 6_273,
    })
  })

  it('with a discount of the whole are nothing, on either basis', () => {
    const lines = [line(997), line(-997)]
    const nothing = { beforeTaxCents: 0, taxCents: 0, totalCents: 0 }
    expect(totalsOfLines(lines, { ...partsOnly, taxBasis: 'line' })).toEqual(nothing)
    expect(totalsOfLines(lines, { ...partsOnly, taxBasis: 'invoice' })).toEqual(nothing)
  })

  it('are the sum of the lines to the cent, for any lines in any order', () => {
    const lines = fc.array(
      fc.tuple(
        fc.integer({ min: -50_000, max: 500_000 }),
        fc.constantFrom<EstimateLine['taxClass']>('parts', 'labor', 'fee', 'tire', 'none'),
      ),
      { maxLength: 12 },
    )
    const basis = fc.constantFrom('line', 'invoice')
    fc.assert(
      fc.property(lines, basis, fc.integer({ min: 0, max: 15_000 }), (entered, taxBasis, rate) => {
        const rule = { taxRatePercentThousandths: rate, taxedClasses: ['parts', 'tire'], taxBasis } as const
        const all = entered.map(([cents, taxClass]) => line(cents, taxClass))
        const totals = totalsOfLines(all, rule)
        const sum = (cents: readonly number[]) => cents.reduce((total, amount) => total + amount, 0)
        const taxed = entered.filter(([, taxClass]) => taxClass === 'parts' || taxClass === 'tire')
        expect(totals.beforeTaxCents).toBe(sum(entered.map(([cents]) => cents)))
        expect(totals.taxCents).toBe(
          taxBasis === 'line'
            ? sum(taxed.map(([cents]) => taxCents(cents, rate)))
            : taxCents(sum(taxed.map(([cents]) => cents)), rate),
        )
        expect(totals.totalCents).toBe(totals.beforeTaxCents + totals.taxCents)
        expect(totalsOfLines(all.toReversed(), rule)).toEqual(totals)
      }),
      { seed: 20260112, numRuns: 500 },
    )
  })

  it('of bundles leave an alternative out', () => {
    const totals = (totalCents: number) => ({
      beforeTaxCents: totalCents - 10,
      taxCents: 10,
      totalCents,
    })
    expect(
      totalsOfBundles([
        { title: 'sensor', money: { totals: totals(500) }, alternativeTo: null },
        { title: 'set-of-four', money: { totals: totals(900) }, alternativeTo: 'one' },
        { title: 'stem', money: { totals: totals(120) }, alternativeTo: null },
        { title: 'if-stem-breaks', money: { totals: totals(700) }, alternativeTo: null },
      ]),
    ).toEqual({ beforeTaxCents: 600, taxCents: 20, totalCents: 620 })
  })
})

describe('an estimate that is admitted', () => {
  const rule = { ...partsOnly, taxBasis: 'line' } as const
  const bundleOf = (bundleKey: string, lines: EstimateLine[]): PricedBundle => ({
    bundleKey,
    title: 'sensor',
    findings: [],
    safety: false,
    cautions: [],
    alternativeTo: null,
    works: [],
    money: { lines, totals: totalsOfLines(lines, rule) },
  })
  const bundles = [
    bundleOf('one', [line(1_000), line(2_000, 'labor')]),
    bundleOf('two', [line(500), line(300, 'fee')]),
  ]
  const estimate: PricedEstimate = {
    revision: 1,
    readyAt: null,
    bundles,
    money: {
      priceListVersion: 1,
      taxRatePercentThousandths: rule.taxRatePercentThousandths,
      taxedClasses: [...rule.taxedClasses],
      taxBasis: rule.taxBasis,
      totals: totalsOfBundles(bundles),
    },
  }
  const withTotals = (totals: Totals): PricedEstimate => ({
    ...estimate,
    money: { ...estimate.money, totals },
  })
  const withMoney = (
    index: number,
    changed: (money: PricedBundle['money']) => PricedBundle['money'],
  ): PricedEstimate => ({
    ...estimate,
    bundles: bundles.map((bundle, at) =>
      at === index ? { ...bundle, money: changed(bundle.money) } : bundle,
    ),
  })

  it('has totals that follow from its lines', () => {
    expect(totalsAreRight(estimate)).toBe(true)
  })

  it.each(['beforeTaxCents', 'taxCents', 'totalCents'] as const)('is refused with another %s', (figure) => {
    const more = (totals: Totals) => ({ ...totals, [figure]: totals[figure] + 1 })
    expect(totalsAreRight(withTotals(more(estimate.money.totals)))).toBe(false)
    for (const index of [0, 1])
      expect(totalsAreRight(withMoney(index, (one) => ({ ...one, totals: more(one.totals) })))).toBe(false)
  })

  it.each([0, 1])('is refused with a line %i that is not its quantity times its price', (at) => {
    const changed = withMoney(1, (money) => {
      const lines = money.lines.map((one, index) =>
        index === at ? { ...one, unitCents: one.unitCents + 1 } : one,
      )
      return { ...money, lines }
    })
    expect(totalsAreRight(changed)).toBe(false)
  })

  it('is refused where one total is made up by another', () => {
    const { beforeTaxCents, taxCents: tax, totalCents } = estimate.money.totals
    const shifted = { beforeTaxCents: beforeTaxCents + 1, taxCents: tax - 1, totalCents }
    expect(totalsAreRight(withTotals(shifted))).toBe(false)
  })
})
