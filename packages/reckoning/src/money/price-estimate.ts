import type { BundleMoney, PricedBundle, PricedEstimate } from '../estimate.ts'
import { isConditional } from './added-bundles.ts'
import { sumCents } from './cents.ts'
import { discountLines } from './discount.ts'
import { feeLines } from './fees.ts'
import { type LineDiscount, lineDiscountLines } from './line-discounts.ts'
import type { OfferedBundle } from './offer.ts'
import type { Discount } from './price-book.ts'
import { feeLine } from './price-lines.ts'
import type { PriceList } from './price-list.ts'
import { suppliesFeeCents } from './supplies-fee.ts'
import { sameTotals, totalsOfBundles, totalsOfLines } from './totals.ts'

export type PriceEstimateOf = {
  readonly bundles: readonly OfferedBundle[]
  readonly prices: PriceList
  readonly revision: number
  /** UTC text, or `null` where no time is promised. */
  readonly readyAt: string | null
  /** The money of bundles that keep the price at which they were agreed on, by their keys. */
  readonly agreed?: ReadonlyMap<string, BundleMoney>
  /** Taken off every work; never off the look, which was agreed on before, nor off what keeps its price. */
  readonly discount?: Discount | null
  /** Taken off single lines of bundles that do not keep their price. */
  readonly lineDiscounts?: readonly LineDiscount[]
  /** The customer's certificate of exemption from sales tax; then there is none. */
  readonly exemption?: string | null
}

const nothingAgreed: ReadonlyMap<string, BundleMoney> = new Map()

/**
 * Freezes offered bundles into an estimate: the supplies fee of each bundle, on the labor that is charged after
 * discounts on single lines, together never above its cap (an alternative has the cap of what it replaces), the shop's own fees and a discount, then tax, then totals. Every figure from the price list is in it
 * by value. A bundle that was agreed on keeps its price, whatever the price list says since.
 *
 * @limits Where the tax has changed since, an agreed bundle is priced anew: one version has one rule of tax.
 * @units Cents; quantities in hundredths; percentages in thousandths.
 * @source This program's own rule; tax as in `taxCents`, the fee as in `suppliesFeeCents`.
 */
export const priceEstimate = ({
  bundles,
  prices,
  revision,
  readyAt,
  agreed = nothingAgreed,
  discount = null,
  lineDiscounts = [],
  exemption = null,
}: PriceEstimateOf): PricedEstimate => {
  const rule = exemption === null ? prices : { ...prices, taxRatePercentThousandths: 0 }
  const priced: PricedBundle[] = []
  const looks = bundles.filter(isLook).flatMap(({ lines }) => lines)
  for (const bundle of bundles) {
    const beside = priced.filter(
      (other) =>
        other.alternativeTo === null && other.bundleKey !== bundle.alternativeTo && !isConditional(other),
    )
    const charged = sumCents(
      beside
        .flatMap(({ money }) => money.lines)
        .filter(({ lineKey }) => lineKey === suppliesKey)
        .map(({ amountCents }) => amountCents),
    )
    const { lines: offered, ...scope } = bundle
    const kept = agreed.get(bundle.bundleKey)
    if (kept && sameTotals(kept.totals, totalsOfLines(kept.lines, rule))) {
      priced.push({ ...scope, money: kept })
      continue
    }
    const takenOff = isLook(bundle) ? [] : lineDiscountLines(bundle.bundleKey, offered, lineDiscounts)
    const fee = suppliesFeeCents(
      [...offered, ...takenOff, ...(isFirst(bundle, priced) ? looks : [])],
      prices.supplies,
      charged,
    )
    const lines = [
      ...offered,
      // What is covered brings no fee of the shop's own.
      ...feeLines(
        prices.fees ?? [],
        offered.filter(({ cover, amountCents }) => cover === undefined || amountCents > 0),
      ),
      ...(fee > 0 ? [feeLine(suppliesKey, fee)] : []),
      ...takenOff,
      ...(discount === null || isLook(bundle) ? [] : discountLines(offered, discount)),
    ]
    priced.push({ ...scope, money: { lines, totals: totalsOfLines(lines, rule) } })
  }
  return {
    revision,
    readyAt,
    bundles: priced,
    money: {
      priceListVersion: prices.version,
      taxRatePercentThousandths: rule.taxRatePercentThousandths,
      taxedClasses: [...prices.taxedClasses],
      taxBasis: prices.taxBasis,
      ...(exemption === null ? {} : { exemption }),
      totals: totalsOfBundles(priced),
    },
  }
}

const suppliesKey = 'supplies'

const isLook = ({ works }: OfferedBundle): boolean =>
  works.length > 0 && works.every(({ kind }) => kind === 'look')

/** The first work, or what replaces it: its fee counts the labor of the look too, because there is work now. */
const isFirst = (bundle: OfferedBundle, priced: readonly PricedBundle[]): boolean =>
  !isLook(bundle) &&
  (priced.length === 0 || (bundle.alternativeTo !== null && bundle.alternativeTo === priced[0]?.bundleKey))

/**
 * A bundle of an earlier version as it is offered again: its lines without those that pricing adds.
 *
 * @source This program's own rule.
 */
export const offeredAgain = ({ money, ...scope }: PricedBundle): OfferedBundle => ({
  ...scope,
  lines: money.lines.filter(
    ({ kind, lineKey }) => kind !== 'discount' && lineKey !== suppliesKey && !lineKey.startsWith('fee.'),
  ),
})
