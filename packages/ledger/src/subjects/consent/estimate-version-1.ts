import type { BundleTitle, EstimateLine, EstimateMoney } from '@bayledger/reckoning/estimate'
import * as z from 'zod/mini'
import { cautionAsWritten } from '../../caution-as-written.ts'
import { digestOf } from '../../digests.ts'
import { Digest, Id, Instant } from '../../text.ts'

/**
 * Version 1 of `estimate.issued`, frozen: shops have estimates like this on record, so nothing here follows later
 * changes elsewhere. Version 1 held its prices inline and said titles, reasons and lines in words. Stepping up, the money
 * gets a plain SHA-256 in the place of a side's salted digest, and `inlineMoneyOf` gives the content to that digest.
 */
const cents = z.int()
const words = z.string().check(z.minLength(1), z.maxLength(300))
const key = z.string().check(z.regex(/^[a-z0-9][a-z0-9.-]{0,60}$/i))
const wheel = z.enum(['LF', 'RF', 'RR', 'LR', 'SP'])
const taxClass = z.enum(['parts', 'labor', 'fee', 'tire', 'none'])
const totals = z.strictObject({ beforeTaxCents: cents, taxCents: cents, totalCents: cents })
const valve = z.enum(['snap-in', 'clamp-in'])

const line = z.strictObject({
  lineKey: key,
  kind: z.enum(['look', 'labor', 'part', 'kit', 'fee', 'discount', 'no-charge']),
  words,
  priceCode: key,
  quantityHundredths: z.int().check(z.positive()),
  unitCents: cents,
  amountCents: cents,
  taxClass,
})

const work = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('look') }),
  z.strictObject({ kind: z.literal('fit-sensor'), wheel, valve, identity: z.enum(['copy', 'new']) }),
  z.strictObject({ kind: z.literal('service-stem'), wheel, valve: z.enum(['snap-in', 'clamp-in', 'plain']) }),
  z.strictObject({ kind: z.literal('find-leak'), wheel }),
  z.strictObject({ kind: z.literal('fit-tire'), wheel }),
  z.strictObject({ kind: z.literal('swap-wheels') }),
  z.strictObject({
    kind: z.literal('rotate'),
    pattern: z.enum([
      'front-to-back',
      'rearward-cross',
      'forward-cross',
      'cross',
      'side-to-side',
      'five-rearward-cross',
      'five-forward-cross',
    ]),
  }),
  z.strictObject({ kind: z.literal('torque-again'), wheel: z.enum(['LF', 'RF', 'RR', 'LR']) }),
  z.strictObject({ kind: z.literal('set-pressures') }),
  z.strictObject({ kind: z.literal('relearn') }),
  z.strictObject({ kind: z.literal('reset') }),
])

const bundle = z.strictObject({
  bundleKey: key,
  title: words,
  reason: words,
  findings: z.array(z.string()),
  safety: z.boolean(),
  caution: z.nullable(z.string()),
  alternativeTo: z.nullable(key),
  works: z.array(work),
  lines: z.array(line).check(z.minLength(1)),
  totals,
})

export const EstimateVersion1 = z.strictObject({
  diagnosisId: Id,
  estimate: z.strictObject({
    revision: z.int().check(z.positive()),
    priceListVersion: z.int().check(z.positive()),
    taxRatePercentThousandths: z.int().check(z.gte(0)),
    taxedClasses: z.array(taxClass),
    taxBasis: z.enum(['line', 'invoice']),
    readyAt: z.nullable(Instant),
    bundles: z.array(bundle).check(z.minLength(1)),
    totals,
  }),
  digest: Digest,
})
type Version1 = z.infer<typeof EstimateVersion1>
type BundleVersion1 = z.infer<typeof bundle>

/** Version 1 to version 2. The digest stays the one that was issued and answered. */
export const estimateToVersion2 = ({ diagnosisId, estimate, digest }: Version1) => ({
  diagnosisId,
  digest,
  scope: {
    revision: estimate.revision,
    readyAt: estimate.readyAt,
    bundles: estimate.bundles.map((one) => ({
      bundleKey: one.bundleKey,
      title: titleOf(one),
      findings: one.findings,
      safety: one.safety,
      cautions: one.caution === null ? [] : [cautionAsWritten(one.caution)],
      alternativeTo: one.alternativeTo,
      works: one.works,
      money: digestOf(bundleMoney(one)),
      asWritten: { title: one.title, reason: one.reason },
    })),
    money: digestOf(estimateMoney(estimate)),
  },
})

/** The money that version 1 held inline, by the digests that replace it after the step to version 2. */
export const inlineMoneyOf = ({ estimate }: Version1): unknown[] => [
  ...estimate.bundles.map(bundleMoney),
  estimateMoney(estimate),
]

const estimateMoney = (estimate: Version1['estimate']): EstimateMoney => ({
  priceListVersion: estimate.priceListVersion,
  taxRatePercentThousandths: estimate.taxRatePercentThousandths,
  taxedClasses: estimate.taxedClasses,
  taxBasis: estimate.taxBasis,
  totals: estimate.totals,
})

const bundleMoney = (one: BundleVersion1) => ({
  lines: one.lines.map((written): EstimateLine => ({ ...written, code: null, wheels: [], sensor: null })),
  totals: one.totals,
})

const titleOf = ({ alternativeTo, works }: BundleVersion1): BundleTitle => {
  const first = works[0]?.kind ?? 'look'
  return first === 'fit-sensor' && alternativeTo !== null ? 'set-of-four' : titles[first]
}

const titles: Readonly<Record<BundleVersion1['works'][number]['kind'], BundleTitle>> = {
  look: 'look',
  'fit-sensor': 'sensor',
  'service-stem': 'stem',
  'find-leak': 'leak',
  'fit-tire': 'tire',
  'swap-wheels': 'season',
  rotate: 'rotation',
  'torque-again': 'torque-again',
  'set-pressures': 'pressures',
  relearn: 'relearn',
  reset: 'reset',
}
