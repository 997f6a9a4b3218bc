import { canonicalText } from '@bayledger/ledger/digests'
import type { MoneySides } from '@bayledger/ledger/questions/money'
import type { IssuedBundle, IssuedEstimate } from '@bayledger/ledger/state'
import type { BundleMoney, EstimateMoney } from '@bayledger/reckoning/estimate'
import { digest } from './worked-people.ts'

const totals = (totalCents: number) => ({ beforeTaxCents: totalCents, taxCents: 0, totalCents })

const bundle = (
  bundleKey: string,
  title: IssuedBundle['title'],
  money: string,
  works: IssuedBundle['works'],
  cautions: IssuedBundle['cautions'],
): IssuedBundle => ({
  bundleKey,
  title,
  findings: ['sensor-silent'],
  safety: false,
  cautions,
  alternativeTo: null,
  works,
  money,
})

/** One sensor, or four: two decisions. */
export const workedScope: IssuedEstimate['scope'] = {
  revision: 1,
  readyAt: null,
  bundles: [
    bundle(
      'sensor-rr',
      'sensor',
      digest('1'),
      [{ kind: 'fit-sensor', wheel: 'RR', valve: 'clamp-in', identity: 'new' }],
      [],
    ),
    bundle(
      'sensor-set',
      'set-of-four',
      digest('2'),
      [{ kind: 'relearn' }],
      [{ number: 'CT-05', version: 1 }],
    ),
  ],
  money: digest('3'),
}

export const moneyOf = (bundleKey: string, totalCents: number): BundleMoney => ({
  lines: [
    {
      lineKey: `${bundleKey}-line`,
      kind: 'part',
      code: 'sensor',
      words: null,
      wheels: ['RR'],
      sensor: { frequencyMHz: 315, stem: 'clamp-in' },
      priceCode: bundleKey,
      quantityHundredths: 100,
      unitCents: totalCents,
      amountCents: totalCents,
      taxClass: 'parts',
    },
  ],
  totals: totals(totalCents),
})

const whole: EstimateMoney = {
  priceListVersion: 1,
  taxRatePercentThousandths: 6_250,
  taxedClasses: ['parts'],
  taxBasis: 'line',
  totals: totals(77_040),
}

export const workedMoney: MoneySides = new Map([
  [digest('1'), canonicalText(moneyOf('sensor-rr', 20_340))],
  [digest('2'), canonicalText(moneyOf('sensor-set', 56_700))],
  [digest('3'), canonicalText(whole)],
])
