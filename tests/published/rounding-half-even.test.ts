/**
 * Source: rounding half to even, the default of IEEE 754 and rule A of ISO 80000-1 annex B, from memory. It is right
 * for measurements and wrong for US sales tax: the rows show where the two part. The rule is here in whole
 * numbers, apart from our own arithmetic.
 */
import { taxCents } from '@bayledger/reckoning/money/cents'
import { expect, it } from 'vitest'
import { published } from './published.ts'

/** Half to even of the third decimal, in ten-millionths of a cent as a whole number. */
const halfEven = (cents: number, ratePercentThousandths: number): number => {
  const thousandths = (BigInt(cents) * BigInt(ratePercentThousandths)) / 10_000n
  const [whole, third] = [thousandths / 10n, thousandths % 10n]
  const isUp = third > 5n || (third === 5n && whole % 2n === 1n)
  return Number(isUp ? whole + 1n : whole)
}

const parting = [
  [860, 7_500, 64, 65],
  [2_000, 7_225, 144, 145],
  [1_290, 5_000, 64, 65],
] as const

const agreeing = [
  [1_099, 6_250, 69],
  [921, 7_000, 64],
  [18_996, 6_125, 1_164],
  [99, 5_000, 5],
  [4_768, 8_750, 417],
] as const

published(
  { document: 'ISO 80000-1', section: 'annex B, rule A (half to even)', certainty: 'from memory' },
  () => {
    it.each(parting)('%i cents at %i: half to even is %i, the tax is %i', (cents, rate, even, tax) => {
      expect(halfEven(cents, rate)).toBe(even)
      expect(taxCents(cents, rate)).toBe(tax)
    })

    it.each(agreeing)('%i cents at %i: both are %i', (cents, rate, tax) => {
      expect(halfEven(cents, rate)).toBe(tax)
      expect(taxCents(cents, rate)).toBe(tax)
    })
  },
)
