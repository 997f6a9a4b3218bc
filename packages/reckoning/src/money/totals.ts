import type { Bundle, EstimateLine, PricedEstimate, TaxClass, Totals } from '../estimate.ts'
import { isConditional } from './added-bundles.ts'
import { extendedCents, sumCents, taxCents } from './cents.ts'

/** How tax is computed where the shop is: the rate, what is taxed, and whether per line or per invoice. */
export type TaxRule = {
  readonly taxRatePercentThousandths: number
  readonly taxedClasses: readonly TaxClass[]
  readonly taxBasis: 'line' | 'invoice'
}

/**
 * The totals of some lines: always the sum of the lines to the cent, in any order. A discount or a
 * credit is a line of a negative amount and takes its own tax back.
 *
 * @formula Before tax: the sum of all lines. Tax: per line, or once on the sum of the taxed lines.
 * @units Cents.
 * @source Streamlined Sales and Use Tax Agreement, section 324: the seller may choose the item or the invoice as the
 * basis. Read as enacted in R.I. Gen. Laws 44-18.1-25 and Kan. Stat. 79-3676.
 */
export const totalsOfLines = (lines: readonly EstimateLine[], rule: TaxRule): Totals => {
  const taxed = lines
    .filter(({ taxClass }) => rule.taxedClasses.includes(taxClass))
    .map(({ amountCents }) => amountCents)
  const tax =
    rule.taxBasis === 'line'
      ? sumCents(taxed.map((amount) => taxCents(amount, rule.taxRatePercentThousandths)))
      : taxCents(sumCents(taxed), rule.taxRatePercentThousandths)
  const beforeTaxCents = sumCents(lines.map(({ amountCents }) => amountCents))
  return { beforeTaxCents, taxCents: tax, totalCents: beforeTaxCents + tax }
}

/**
 * The totals of an estimate: the sum of its bundles, of which an alternative counts only in the place of what it
 * replaces, so it is left out here, as is what is only for a case that may never come. Bundles are taxed one by one, because each is decided one by one.
 *
 * @units Cents.
 * @source This program's own rule.
 */
export const totalsOfBundles = (
  bundles: readonly (Pick<Bundle, 'alternativeTo' | 'title'> & {
    readonly money: { readonly totals: Totals }
  })[],
): Totals => {
  const counted = bundles
    .filter((bundle) => bundle.alternativeTo === null && !isConditional(bundle))
    .map(({ money }) => money.totals)
  return {
    beforeTaxCents: sumCents(counted.map((totals) => totals.beforeTaxCents)),
    taxCents: sumCents(counted.map((totals) => totals.taxCents)),
    totalCents: sumCents(counted.map((totals) => totals.totalCents)),
  }
}

/**
 * Whether every amount of an estimate follows from its lines: what the server derives again before it admits one.
 *
 * @source This program's own rule.
 */
export const totalsAreRight = ({ bundles, money }: PricedEstimate): boolean =>
  bundles.every(
    (bundle) =>
      bundle.money.lines.every(
        (line) => line.amountCents === extendedCents(line.quantityHundredths, line.unitCents),
      ) && sameTotals(bundle.money.totals, totalsOfLines(bundle.money.lines, money)),
  ) && sameTotals(money.totals, totalsOfBundles(bundles))

/**
 * Whether two totals are the same to the cent.
 *
 * @source This program's own rule.
 */
export const sameTotals = (one: Totals, other: Totals): boolean =>
  one.beforeTaxCents === other.beforeTaxCents &&
  one.taxCents === other.taxCents &&
  one.totalCents === other.totalCents
