import * as z from 'zod/mini'
import { RotationPattern } from './rotation/rotation-pattern.ts'
import { RoadPosition, WheelPosition } from './wheels.ts'

/** Whole cents of a dollar; may be negative for a discount or a credit. */
export const Cents = z.int()
export type Cents = z.infer<typeof Cents>

const words = z.string().check(z.minLength(1), z.maxLength(300))
const key = z.string().check(z.regex(/^[a-z0-9][a-z0-9.-]{0,60}$/i))

export const TaxClass = z.enum(['parts', 'labor', 'fee', 'tire', 'none'])
export type TaxClass = z.infer<typeof TaxClass>

/** One priced line: quantity in hundredths (labor in hundredths of an hour), so that no binary fraction enters. */
export const EstimateLine = z.strictObject({
  lineKey: key,
  kind: z.enum(['look', 'labor', 'part', 'kit', 'fee', 'discount', 'no-charge']),
  words,
  priceCode: key,
  quantityHundredths: z.int().check(z.positive()),
  unitCents: Cents,
  amountCents: Cents,
  taxClass: TaxClass,
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
  z.strictObject({ kind: z.literal('find-leak'), wheel: WheelPosition }),
  /** A new tire on the wheel that is there; its sensor, if it has one, stays. */
  z.strictObject({ kind: z.literal('fit-tire'), wheel: WheelPosition }),
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

/** Lines that only make sense together: the customer answers the whole bundle. */
export const Bundle = z.strictObject({
  bundleKey: key,
  title: words,
  reason: words,
  findings: z.array(z.string()),
  safety: z.boolean(),
  caution: z.nullable(z.string()),
  alternativeTo: z.nullable(key),
  works: z.array(Work),
  lines: z.array(EstimateLine).check(z.minLength(1)),
  totals: z.strictObject({ beforeTaxCents: Cents, taxCents: Cents, totalCents: Cents }),
})
export type Bundle = z.infer<typeof Bundle>

/** One frozen version of an estimate with every outside figure it relied on by value. */
export const Estimate = z.strictObject({
  revision: z.int().check(z.positive()),
  priceListVersion: z.int().check(z.positive()),
  taxRatePercentThousandths: z.int().check(z.gte(0)),
  taxedClasses: z.array(TaxClass),
  taxBasis: z.enum(['line', 'invoice']),
  readyAt: z.nullable(z.iso.datetime({ precision: 3 })),
  bundles: z.array(Bundle).check(z.minLength(1)),
  totals: z.strictObject({ beforeTaxCents: Cents, taxCents: Cents, totalCents: Cents }),
})
export type Estimate = z.infer<typeof Estimate>

export const Answer = z.enum(['authorized', 'declined', 'deferred'])
export type Answer = z.infer<typeof Answer>
