import type { Cents, EstimateLine, TaxClass } from '../estimate.ts'
import { shareCents, sumCents } from './cents.ts'
import type { Discount, DiscountLimits } from './price-book.ts'

/** What a discount is taken off. Fees are owed to others or disclosed as they are. */
const discounted: readonly TaxClass[] = ['labor', 'parts', 'tire']

const chargedFor = (lines: readonly EstimateLine[], taxClass: TaxClass): Cents =>
  sumCents(
    lines
      .filter((line) => line.taxClass === taxClass && line.kind !== 'discount')
      .map(({ amountCents }) => amountCents),
  )

/**
 * The lines of a discount on some lines that are decided together: one for each tax class, so that it takes its tax back.
 *
 * @formula share of each class, rounded half up to the cent; at most the cap, class by class in the order labor, parts, tires
 * @units Cents.
 * @source This program's own rule.
 */
export const discountLines = (lines: readonly EstimateLine[], discount: Discount): EstimateLine[] => {
  let left = discount.capCents ?? Number.POSITIVE_INFINITY
  return discounted.flatMap((taxClass) => {
    const cents = Math.min(left, shareCents(chargedFor(lines, taxClass), discount.percentThousandths))
    left -= cents
    return cents <= 0
      ? []
      : [
          {
            lineKey: `discount.${discount.key}.${taxClass}`,
            kind: 'discount',
            code: null,
            words: discount.words,
            wheels: [],
            sensor: null,
            priceCode: `discount.${discount.key}`,
            quantityHundredths: 100,
            unitCents: -cents,
            amountCents: -cents,
            taxClass,
          } as const,
        ]
  })
}

/**
 * The most that one of these roles may take off, in thousandths of a percent.
 *
 * @source This program's own rule; the limits are the shop's own.
 */
export const limitOf = (limits: DiscountLimits, roles: readonly string[]): number =>
  Math.max(0, ...Object.entries(limits).flatMap(([role, limit]) => (roles.includes(role) ? [limit] : [])))

/**
 * Whether what is taken off some lines is more than a share of them; compared class by class to the cent.
 *
 * @units Thousandths of a percent.
 * @source This program's own rule.
 */
export const isOverLimit = (lines: readonly EstimateLine[], limit: number): boolean => {
  const off = lines.filter(({ amountCents, kind }) => amountCents < 0 && kind !== 'deposit')
  // Nobody gives back more of a deposit than was charged.
  const deposits = sumCents(
    lines.filter(({ kind }) => kind === 'deposit').map(({ amountCents }) => amountCents),
  )
  if (deposits < 0) return true
  return [...new Set(off.map(({ taxClass }) => taxClass))].some(
    (taxClass) =>
      -sumCents(off.filter((line) => line.taxClass === taxClass).map(({ amountCents }) => amountCents)) >
      shareCents(
        sumCents(
          lines
            .filter((line) => line.taxClass === taxClass && line.amountCents > 0 && line.kind !== 'deposit')
            .map(({ amountCents }) => amountCents),
        ),
        limit,
      ),
  )
}
