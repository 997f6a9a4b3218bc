import * as z from 'zod/mini'
import { CautionReference } from './cautions/caution-reference.ts'
import { LineCover } from './money/line-cover.ts'
import { RotationPattern } from './rotation/rotation-pattern.ts'
import { RoadPosition, WheelPosition } from './wheels.ts'

/** Whole cents of a dollar; may be negative for a discount or a credit. */
export const Cents = z.int()
export type Cents = z.infer<typeof Cents>

const words = z.string().check(z.minLength(1), z.maxLength(300))
const key = z.string().check(z.regex(/^[a-z0-9][a-z0-9.-]{0,60}$/i))

export const TaxClass = z.enum(['parts', 'labor', 'fee', 'tire', 'none'])
export type TaxClass = z.infer<typeof TaxClass>

/** A line that the program makes, by code: wording says it, so that no price list holds a sentence of ours. */
export const LineCode = z.enum([
  'look',
  'look-waived',
  'look-waived-with-work',
  'sensor',
  'wheel-service',
  'wheel-service-low',
  'program-and-relearn',
  'relearn',
  'reset',
  'repair-labor',
  'leak-search',
  'repair-after-look',
  'puncture-labor',
  'repair-unit',
  'kit-clamp-in',
  'kit-rubber',
  'sensor-disposal',
  'tire',
  'tire-disposal',
  'fastener-labor',
  'fastener-parts',
  'pressures',
  'pressures-alone',
  'pressures-labor',
  'rotation-labor',
  'season-labor',
  'torque-again',
  'torque-again-labor',
  'spare-labor',
  'deposit',
  'deposit-returned',
  'supplies',
])
export type LineCode = z.infer<typeof LineCode>

/**
 * One priced line: quantity in hundredths (labor in hundredths of an hour), so that no binary fraction enters. It is
 * named by its code, or, where a person wrote it, by their words.
 */
export const EstimateLine = z.strictObject({
  lineKey: key,
  kind: z.enum(['look', 'labor', 'part', 'kit', 'fee', 'deposit', 'discount', 'no-charge']),
  code: z.nullable(LineCode),
  words: z.nullable(words),
  /** The wheels that the line is for; none where it is for the vehicle. */
  wheels: z.array(WheelPosition),
  /** What kind of sensor is sold, on the line that sells one. */
  sensor: z.nullable(z.strictObject({ frequencyMHz: z.number(), stem: z.enum(['snap-in', 'clamp-in']) })),
  priceCode: key,
  quantityHundredths: z.int().check(z.positive()),
  unitCents: Cents,
  amountCents: Cents,
  taxClass: TaxClass,
  /**
   * On a comeback: what the line would cost without its cover, and why a person decided against the terms; absent where the
   * line is charged by the terms, or none were judged.
   */
  cover: z.optional(z.strictObject({ listCents: Cents, why: z.nullable(words) })),
})
export type EstimateLine = z.infer<typeof EstimateLine>

/** What a bundle makes the shop do; the job plan is computed from the works of the authorized bundles. */
export const Work = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('look') }),
  z.strictObject({
    kind: z.literal('fit-sensor'),
    wheel: WheelPosition,
    valve: z.enum(['snap-in', 'clamp-in']),
    identity: z.enum(['copy', 'new']),
  }),
  z.strictObject({
    kind: z.literal('service-stem'),
    wheel: WheelPosition,
    valve: z.enum(['snap-in', 'clamp-in', 'plain']),
  }),
  /** The leak is searched and the tire looked at inside. What closes a hole is another work, priced after that look. */
  z.strictObject({ kind: z.literal('find-leak'), wheel: WheelPosition }),
  /** Holes that the look inside has measured are plugged and patched. */
  z.strictObject({ kind: z.literal('repair-puncture'), wheel: WheelPosition }),
  /** A new tire on the wheel that is there; its sensor, if it has one, stays. */
  z.strictObject({ kind: z.literal('fit-tire'), wheel: WheelPosition }),
  /** Damaged studs, nuts or bolts of a hub are renewed, the wheel being off. */
  z.strictObject({ kind: z.literal('repair-fastener'), wheel: RoadPosition }),
  /** The other season's wheels go on, all four, each with its own sensor where the vehicle listens for one. */
  z.strictObject({ kind: z.literal('swap-wheels') }),
  z.strictObject({ kind: z.literal('rotate'), pattern: RotationPattern }),
  /** The look at the torque some miles after the wheel was off. */
  z.strictObject({ kind: z.literal('torque-again'), wheel: RoadPosition }),
  z.strictObject({ kind: z.literal('set-pressures') }),
  z.strictObject({ kind: z.literal('relearn') }),
  z.strictObject({ kind: z.literal('reset') }),
])
export type Work = z.infer<typeof Work>

/**
 * What a bundle is called, by code: one for each kind of work that can lead it, one for the set of four, and those of what
 * the advisor adds by hand.
 */
export const BundleTitle = z.enum([
  'look',
  'sensor',
  'set-of-four',
  'stem',
  'leak',
  'leak-search',
  'puncture',
  'tire',
  'fastener',
  'season',
  'rotation',
  'torque-again',
  'pressures',
  'relearn',
  'reset',
  'tires',
  'spare',
  'outside-work',
  'by-hand',
  'if-stem-breaks',
])
export type BundleTitle = z.infer<typeof BundleTitle>

/** What only makes sense together: the customer answers the whole bundle. This is its scope, without money. */
export const Bundle = z.strictObject({
  bundleKey: key,
  title: BundleTitle,
  /** The findings that call for it; the first is the reason that the customer reads. */
  findings: z.array(z.string()),
  safety: z.boolean(),
  /** What the customer must have read before a No or Not today is recorded. */
  cautions: z.array(CautionReference),
  alternativeTo: z.nullable(key),
  works: z.array(Work),
  /** On a comeback: what the shop's warranty terms say of its lines; absent elsewhere. */
  covers: z.optional(z.array(LineCover).check(z.minLength(1))),
})
export type Bundle = z.infer<typeof Bundle>

export const Totals = z.strictObject({ beforeTaxCents: Cents, taxCents: Cents, totalCents: Cents })
export type Totals = z.infer<typeof Totals>

/** The money of one bundle. */
export const BundleMoney = z.strictObject({
  lines: z.array(EstimateLine).check(z.minLength(1)),
  totals: Totals,
})
export type BundleMoney = z.infer<typeof BundleMoney>

/** The money of one version of an estimate: every outside figure it relied on by value, and the sum of its bundles. */
export const EstimateMoney = z.strictObject({
  priceListVersion: z.int().check(z.positive()),
  taxRatePercentThousandths: z.int().check(z.gte(0)),
  taxedClasses: z.array(TaxClass),
  taxBasis: z.enum(['line', 'invoice']),
  /** The certificate by which the customer pays no sales tax; absent where they pay it. */
  exemption: z.optional(words),
  totals: Totals,
})
export type EstimateMoney = z.infer<typeof EstimateMoney>

/** A bundle with its money, as the desk sees it before it is issued. */
export type PricedBundle = Bundle & { readonly money: BundleMoney }

/** One version of an estimate with its money. */
export type PricedEstimate = {
  readonly revision: number
  /** UTC text, or `null` where no time is promised. */
  readonly readyAt: string | null
  readonly bundles: readonly PricedBundle[]
  readonly money: EstimateMoney
}

export const Answer = z.enum(['authorized', 'declined', 'deferred'])
export type Answer = z.infer<typeof Answer>
