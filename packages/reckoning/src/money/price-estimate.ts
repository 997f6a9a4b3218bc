import type { Bundle, Cents, Estimate, EstimateLine } from '../estimate.ts'
import { shareCents, sumCents } from './cents.ts'
import type { OfferedBundle } from './offer-bundles.ts'
import { feeLine } from './price-lines.ts'
import type { PriceList } from './price-list.ts'
import { totalsOfBundles, totalsOfLines } from './totals.ts'

export type PriceEstimateOf = {
  readonly bundles: readonly OfferedBundle[]
  readonly prices: PriceList
  readonly revision: number
  /** UTC text, or `null` where no time is promised. */
  readonly readyAt: string | null
}

/**
 * Freezes offered bundles into an estimate: the supplies fee is a share of each bundle's labor, together never
 * above its cap (an alternative has the cap of what it replaces), then tax, then totals. Every figure from the
 * price list stands in it by value.
 */
export const priceEstimate = ({ bundles, prices, revision, readyAt }: PriceEstimateOf): Estimate => {
  const priced: Bundle[] = []
  for (const bundle of bundles) {
    const beside = priced.filter(
      (other) => other.alternativeTo === null && other.bundleKey !== bundle.alternativeTo,
    )
    const left =
      prices.supplies.capCents -
      sumCents(
        beside
          .flatMap(({ lines }) => lines)
          .filter(isSupplies)
          .map(({ amountCents }) => amountCents),
      )
    const lines = withSupplies(bundle.lines, prices, left)
    priced.push({ ...bundle, lines, totals: totalsOfLines(lines, prices) })
  }
  return {
    revision,
    priceListVersion: prices.version,
    taxRatePercentThousandths: prices.taxRatePercentThousandths,
    taxedClasses: [...prices.taxedClasses],
    taxBasis: prices.taxBasis,
    readyAt,
    bundles: priced,
    totals: totalsOfBundles(priced),
  }
}

const suppliesKey = 'supplies'

const isSupplies = ({ lineKey }: EstimateLine): boolean => lineKey === suppliesKey

const withSupplies = (
  lines: readonly EstimateLine[],
  prices: PriceList,
  capLeftCents: Cents,
): EstimateLine[] => {
  const laborLines = lines.filter(({ taxClass }) => taxClass === 'labor')
  // Looking uses nothing up; once there is work, its share counts the whole labor.
  if (laborLines.every(({ kind }) => kind === 'look')) return [...lines]
  const labor = sumCents(laborLines.map(({ amountCents }) => amountCents))
  const fee = Math.min(shareCents(labor, prices.supplies.percentThousandths), Math.max(0, capLeftCents))
  return fee > 0 ? [...lines, feeLine(suppliesKey, 'Shop supplies', fee)] : [...lines]
}
