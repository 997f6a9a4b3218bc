import type { Estimate } from '@bayledger/reckoning/estimate'

const totals = (totalCents: number) => ({ beforeTaxCents: totalCents, taxCents: 0, totalCents })

const bundle = (
  bundleKey: string,
  title: string,
  totalCents: number,
  works: Estimate['bundles'][number]['works'],
  safety: boolean,
): Estimate['bundles'][number] => ({
  bundleKey,
  title,
  reason: title,
  findings: ['sensor-silent'],
  safety,
  caution: null,
  alternativeTo: null,
  works,
  lines: [
    {
      lineKey: `${bundleKey}-line`,
      kind: 'part',
      words: title,
      priceCode: bundleKey,
      quantityHundredths: 100,
      unitCents: totalCents,
      amountCents: totalCents,
      taxClass: 'parts',
    },
  ],
  totals: totals(totalCents),
})

/** One sensor, or four: two decisions. */
export const workedEstimate: Estimate = {
  revision: 1,
  priceListVersion: 1,
  taxRatePercentThousandths: 6_250,
  taxedClasses: ['parts'],
  taxBasis: 'line',
  readyAt: null,
  bundles: [
    bundle(
      'sensor-rr',
      'New right rear sensor',
      20_340,
      [{ kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' }],
      false,
    ),
    bundle('sensor-set', 'Set of four sensors', 56_700, [{ kind: 'relearn' }], false),
  ],
  totals: totals(77_040),
}
