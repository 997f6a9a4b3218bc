/**
 * Source: a guide to rounding sales tax, read online in 2026 (legalclarity.org, half-cent rule): 1.234 becomes 1.23,
 * 1.235 becomes 1.24, and 10.99 at 6.25 % is 0.686875 before rounding.
 */
import { taxCents } from '@bayledger/reckoning/money/cents'
import { expect, it } from 'vitest'
import { published } from './published.ts'

published(
  { document: 'A guide to rounding sales tax', section: 'half cents', edition: '2026', certainty: 'read' },
  () => {
    it.each([
      [1_234, 10_000, 123],
      [1_235, 10_000, 124],
      [1_099, 6_250, 69],
    ])('on %i cents at %i thousandths of a percent it is %i cents', (amount, rate, tax) => {
      expect(taxCents(amount, rate)).toBe(tax)
    })
  },
)
