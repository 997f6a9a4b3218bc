import * as z from 'zod/mini'
import { Cents, TaxClass } from '../estimate.ts'
import { Fee } from './fees.ts'
import { SoldItem } from './sold-items.ts'

/** Labor is sold by tenths of an hour; they are kept in hundredths like every other quantity. 0.4 h is 40. */
const tenthsOfAnHour = z.int().check(z.gte(0), z.lte(10_000), z.multipleOf(10))
const price = Cents.check(z.gte(0), z.lte(10_000_000))

/**
 * One version of a shop's prices; an estimate carries every price that it used by value.
 *
 * @units Cents; hundredths of an hour in whole tenths; thousandths of a percent.
 * @source The shop's own prices; the tax rate is that of the place.
 */
export const PriceList = z.strictObject({
  version: z.int().check(z.positive()),
  taxRatePercentThousandths: z.int().check(z.gte(0), z.lte(100_000)),
  taxedClasses: z.array(TaxClass),
  taxBasis: z.enum(['line', 'invoice']),
  laborCentsPerHour: price,
  hours: z.strictObject({
    look: tenthsOfAnHour,
    relearnFirst: tenthsOfAnHour,
    relearnEachMore: tenthsOfAnHour,
    reset: tenthsOfAnHour,
    /** Works that a customer asks for; one that is absent is not sold, and one of no time is not charged for. */
    rotation: z.optional(tenthsOfAnHour),
    season: z.optional(tenthsOfAnHour),
    torqueAgain: z.optional(tenthsOfAnHour),
    spare: z.optional(tenthsOfAnHour),
    pressures: z.optional(tenthsOfAnHour),
  }),
  /** Wheels with an aspect ratio at or under this take the low-profile price. */
  lowProfileAspect: z.int(),
  prices: z.strictObject({
    wheelService: price,
    wheelServiceLowProfile: price,
    repairLabor: price,
    sensorSnapIn: price,
    sensorClampIn: price,
    sensorHighBand: price,
    kitSnapIn: price,
    kitClampIn: price,
    repairUnit: price,
    /** The work on one hole; absent in lists from when the search for a leak had its repair in it. */
    punctureLabor: z.optional(price),
    sensorDisposal: price,
    /** Absent in a list from before tires were offered; then no estimate offers one. */
    tire: z.optional(price),
    tireDisposal: z.optional(price),
    /** One stud with its nut, or one bolt; absent in lists from before it was sold. */
    fastener: z.optional(price),
    fastenerLabor: z.optional(price),
  }),
  supplies: z.strictObject({ percentThousandths: z.int().check(z.gte(0), z.lte(50_000)), capCents: price }),
  /** The shop's own; absent in lists from before there were any. */
  fees: z.optional(z.array(Fee)),
  /** What is sold by hand; absent in lists from before there was any. */
  items: z.optional(z.array(SoldItem)),
})
export type PriceList = z.infer<typeof PriceList>
