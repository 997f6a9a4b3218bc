import type { Cents, EstimateLine, PricedBundle } from '../estimate.ts'

/** What became of one bundle from one version of an estimate to the next; `lines` that are new, gone, or of another amount. */
export type BundleChange = {
  readonly change: 'added' | 'removed' | 'changed'
  readonly bundle: PricedBundle
  readonly beforeCents: Cents
  readonly afterCents: Cents
  readonly lines: readonly LineChange[]
  /** What it is offered in place of, where that has changed: keys of bundles; `null`: of nothing. */
  readonly inPlaceOf: { readonly before: string | null; readonly after: string | null } | null
}
export type LineChange = {
  readonly line: EstimateLine
  readonly beforeCents: Cents | null
  readonly afterCents: Cents | null
}

/**
 * What a new version of an estimate changes against the one before, bundle by bundle; what is the same to the cent and in
 * place of the same is not named. Totals with tax, lines without.
 *
 * @units Cents.
 * @source This program's own rule.
 */
export const estimateChanges = (
  before: readonly PricedBundle[],
  after: readonly PricedBundle[],
): BundleChange[] => {
  const old = new Map(before.map((bundle) => [bundle.bundleKey, bundle]))
  const kept = new Set(after.map(({ bundleKey }) => bundleKey))
  return [
    ...after.flatMap((bundle): BundleChange[] => {
      const earlier = old.get(bundle.bundleKey)
      const lines = changedLines(earlier?.money.lines ?? [], bundle.money.lines)
      const [beforeCents, afterCents] = [totalOf(earlier), totalOf(bundle)]
      if (earlier === undefined)
        return [{ change: 'added', bundle, beforeCents, afterCents, lines, inPlaceOf: null }]
      const inPlaceOf =
        earlier.alternativeTo === bundle.alternativeTo
          ? null
          : { before: earlier.alternativeTo, after: bundle.alternativeTo }
      return beforeCents === afterCents && lines.length === 0 && inPlaceOf === null
        ? []
        : [{ change: 'changed', bundle, beforeCents, afterCents, lines, inPlaceOf }]
    }),
    ...before
      .filter(({ bundleKey }) => !kept.has(bundleKey))
      .map(
        (bundle): BundleChange => ({
          change: 'removed',
          bundle,
          beforeCents: totalOf(bundle),
          afterCents: 0,
          lines: [],
          inPlaceOf: null,
        }),
      ),
  ]
}

const totalOf = (bundle: PricedBundle | undefined): Cents => bundle?.money.totals.totalCents ?? 0

const changedLines = (before: readonly EstimateLine[], after: readonly EstimateLine[]): LineChange[] => {
  const old = new Map(before.map((line) => [line.lineKey, line]))
  const kept = new Set(after.map(({ lineKey }) => lineKey))
  return [
    ...after.flatMap((line): LineChange[] => {
      const earlier = old.get(line.lineKey)
      const isSame =
        earlier !== undefined &&
        earlier.amountCents === line.amountCents &&
        earlier.quantityHundredths === line.quantityHundredths &&
        earlier.words === line.words
      return isSame ? [] : [{ line, beforeCents: earlier?.amountCents ?? null, afterCents: line.amountCents }]
    }),
    ...before
      .filter(({ lineKey }) => !kept.has(lineKey))
      .map((line) => ({ line, beforeCents: line.amountCents, afterCents: null })),
  ]
}
