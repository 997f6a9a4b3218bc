/**
 * Source: Streamlined Sales and Use Tax Agreement, section 324, read as enacted in R.I. Gen. Laws 44-18.1-25
 * (laws9.com) and Kan. Stat. 79-3676 (print.casetext.com): carry the tax to the third decimal, round to a whole cent,
 * up where the third decimal is greater than four; per item or per invoice, as the seller chooses. The amounts were
 * worked by hand from that text.
 */
import { taxCents } from '@bayledger/reckoning/money/cents'
import { totalsOfLines } from '@bayledger/reckoning/money/totals'
import { expect, it } from 'vitest'
import { published } from './published.ts'

const taxOn = (amounts: readonly number[], rate: number, taxBasis: 'line' | 'invoice') => {
  const lines = amounts.map((amountCents, index) => ({
    lineKey: `part-${index}`,
    kind: 'part' as const,
    code: null,
    words: 'A part',
    wheels: [],
    sensor: null,
    priceCode: 'part',
    quantityHundredths: 100,
    unitCents: amountCents,
    amountCents,
    taxClass: 'parts' as const,
  }))
  return totalsOfLines(lines, { taxRatePercentThousandths: rate, taxedClasses: ['parts'], taxBasis }).taxCents
}

published(
  { document: 'Streamlined Sales and Use Tax Agreement', section: 's. 324, as enacted', certainty: 'read' },
  () => {
    it.each([
      [1_099, 6_250, 69],
      [921, 7_000, 64],
      [860, 7_500, 65],
      [1_290, 5_000, 65],
      [2_000, 7_225, 145],
      [18_996, 6_125, 1_164],
      [99, 5_000, 5],
      [4_768, 8_750, 417],
    ])('on %i cents at %i thousandths of a percent it is %i cents', (amount, rate, tax) => {
      expect(taxCents(amount, rate)).toBe(tax)
    })

    it.each([
      [0, 100],
      [1, 100],
      [2, 100],
      [3, 100],
      [4, 100],
      [5, 101],
      [6, 101],
      [7, 101],
      [8, 101],
      [9, 101],
    ])('a tax of 1.00%i dollars is %i cents', (third, tax) => {
      expect(taxCents(1_000 + third, 10_000)).toBe(tax)
    })

    it.each([
      [[997, 997, 997], 7_250, 'line', 216],
      [[997, 997, 997], 7_250, 'invoice', 217],
      [[65, 65, 65, 65], 7_000, 'line', 20],
      [[65, 65, 65, 65], 7_000, 'invoice', 18],
    ] as const)('on %j at %i, per %s, it is %i cents', (amounts, rate, basis, tax) => {
      expect(taxOn(amounts, rate, basis)).toBe(tax)
    })
  },
)
