import type { Cents, EstimateLine } from '../estimate.ts'

/** So much off one line of a bundle, and why; the customer reads the reason. */
export type LineDiscount = {
  readonly bundleKey: string
  readonly lineKey: string
  readonly reason: string
  readonly cents: Cents
}

const prefix = 'discount.line.'

/**
 * The discounts on single lines of a bundle, each a line of its own under its reason. It takes back the tax of its line,
 * and is never more than its line.
 *
 * @units Cents.
 * @source This program's own rule.
 */
export const lineDiscountLines = (
  bundleKey: string,
  lines: readonly EstimateLine[],
  discounts: readonly LineDiscount[],
): EstimateLine[] =>
  discounts
    .filter((discount) => discount.bundleKey === bundleKey)
    .flatMap(({ lineKey, reason, cents }): EstimateLine[] => {
      const line = lines.find((one) => one.lineKey === lineKey)
      const off = Math.min(cents, line?.amountCents ?? 0)
      return line === undefined || off <= 0 || line.kind === 'deposit'
        ? []
        : [
            {
              lineKey: `${prefix}${lineKey}`,
              kind: 'discount',
              code: null,
              words: reason,
              wheels: [...line.wheels],
              sensor: null,
              priceCode: 'discount.line',
              quantityHundredths: 100,
              unitCents: -off,
              amountCents: -off,
              taxClass: line.taxClass,
            },
          ]
    })

/**
 * The discounts on single lines that a bundle holds, so that its next version keeps them.
 *
 * @units Cents.
 * @source This program's own rule.
 */
export const lineDiscountsIn = (bundleKey: string, lines: readonly EstimateLine[]): LineDiscount[] =>
  lines
    .filter(({ lineKey }) => lineKey.startsWith(prefix))
    .map(({ lineKey, words, amountCents }) => ({
      bundleKey,
      lineKey: lineKey.slice(prefix.length),
      reason: words ?? '',
      cents: -amountCents,
    }))
