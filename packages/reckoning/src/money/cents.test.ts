import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { extendedCents, shareAtMostCents, shareCents, sumCents, taxCents } from './cents.ts'

const amounts = fc.integer({ min: 0, max: 2_000_000 })
const percents = fc.integer({ min: 0, max: 50_000 })

describe('an amount', () => {
  it('is the same sum in any order, with credits in it', () => {
    expect(sumCents([])).toBe(0)
    expect(sumCents([1_299, -300, 1])).toBe(1_000)
  })

  it.each([
    [40, 13_000, 5_200],
    [30, 13_000, 3_900],
    [10, 12_345, 1_235],
    [10, 12_344, 1_234],
    [200, 750, 1_500],
    [50, 1, 1],
    [40, 1, 0],
    [100, -1_999, -1_999],
    [50, -1, -1],
  ])('of %i hundredths at %i cents is %i', (hundredths, unit, cents) => {
    expect(extendedCents(hundredths, unit)).toBe(cents)
  })

  it.each([
    [10_000, 5_000, 500],
    [10_010, 5_000, 501],
    [10_009, 5_000, 500],
    [-10_010, 5_000, -501],
  ])('of %i cents has a share of %i thousandths of %i', (cents, percent, share) => {
    expect(shareCents(cents, percent)).toBe(share)
  })

  it.each([
    [10_019, 5_000, 500],
    [10_020, 5_000, 501],
    [199, 10_000, 19],
  ])('of %i cents has at most %i thousandths of %i: cut, not rounded', (cents, percent, share) => {
    expect(shareAtMostCents(cents, percent)).toBe(share)
  })
})

describe('tax', () => {
  it.each([
    [860, 7_500, 65],
    [-860, 7_500, -65],
    [-921, 7_000, -64],
    [0, 7_000, 0],
  ])('on %i cents at %i thousandths is %i: a credit gives back what its charge bore', (cents, rate, tax) => {
    expect(taxCents(cents, rate)).toBe(tax)
  })

  it('is within half a cent of the exact one, and a credit cancels its charge', () => {
    fc.assert(
      fc.property(amounts, percents, (cents, rate) => {
        const tax = taxCents(cents, rate)
        const exactThousandths = (BigInt(cents) * BigInt(rate)) / 10_000n
        expect(BigInt(tax)).toBe((exactThousandths + 5n) / 10n)
        expect(taxCents(-cents, rate) + tax).toBe(0)
        expect(shareCents(-cents, rate) + shareCents(cents, rate)).toBe(0)
        expect(extendedCents(rate, -cents) + extendedCents(rate, cents)).toBe(0)
      }),
      { seed: 20260112, numRuns: 1_000 },
    )
  })
})
