/**
 * Source: Streamlined Sales and Use Tax Agreement, section 324, read as enacted in R.I. Gen. Laws 44-18.1-25 and
 * Kan. Stat. 79-3676: carry to the third decimal, round up where it is greater than four; per item or per invoice.
 * The amounts were worked by hand; 10.99 at 6.25 % was read as 0.686875 in a guide to rounding.
 */
import { taxCents } from '@bayledger/reckoning/money/cents'
import { totalsOfLines } from '@bayledger/reckoning/money/totals'
import { describe, expect, it } from 'vitest'

describe('sales tax', () => {
  it.each([
    [1_099, 6_250, 69],
    [921, 7_000, 64],
    [860, 7_500, 65],
    [1_290, 5_000, 65],
    [2_000, 7_225, 145],
    [18_996, 6_125, 1_164],
    [99, 5_000, 5],
    [4_768, 8_750, 417],
  ])('on %d cents at %d thousandths of a percent is %d cents', (amount, rate, tax) => {
    expect(taxCents(amount, rate)).toBe(tax)
  })

  it.each([
    [[997, 997, 997], 7_250, 216, 217],
    [[65, 65, 65, 65], 7_000, 20, 18],
  ])('on %j at %d: %d cents by line, %d by invoice', (amounts, rate, byLine, byInvoice) => {
    const lines = amounts.map((amountCents, index) => ({
      lineKey: `part-${index}`,
      kind: 'part' as const,
      words: 'A part',
      priceCode: 'part',
      quantityHundredths: 100,
      unitCents: amountCents,
      amountCents,
      taxClass: 'parts' as const,
    }))
    const taxOn = (taxBasis: 'line' | 'invoice') =>
      totalsOfLines(lines, { taxRatePercentThousandths: rate, taxedClasses: ['parts'], taxBasis }).taxCents
    expect(taxOn('line')).toBe(byLine)
    expect(taxOn('invoice')).toBe(byInvoice)
  })
})
