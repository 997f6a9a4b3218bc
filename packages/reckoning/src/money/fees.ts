import * as z from 'zod/mini'
import type { EstimateLine } from '../estimate.ts'
import { key, price, words } from './book-fields.ts'
import { extendedCents } from './cents.ts'

/** A fee for each tire, sensor or wheel that is sold, in the shop's own words; `capCents`: most of it in one decision. */
export const Fee = z.strictObject({
  key,
  words,
  per: z.enum(['tire', 'sensor', 'wheel']),
  cents: price,
  capCents: z.nullable(price),
  taxClass: z.enum(['fee', 'tire', 'none']),
})
export type Fee = z.infer<typeof Fee>

/** The lines by which tires, sensors and wheels are counted: their codes, or the key of one in the shop's own words. */
const countedBy: Readonly<Record<Fee['per'], readonly string[]>> = {
  tire: ['tire'],
  sensor: ['sensor'],
  wheel: ['wheel-service', 'wheel-service-low'],
}

/**
 * The shop's own fees on some lines that are decided together, each as a line of its own in the shop's words.
 *
 * @formula count · fee, at most the cap
 * @units Cents.
 * @source The shop's own price book; fees are disclosed as lines and never inside labor.
 */
export const feeLines = (fees: readonly Fee[], lines: readonly EstimateLine[]): EstimateLine[] =>
  fees.flatMap((fee) => {
    const counted = lines.filter(({ code, lineKey }) => countedBy[fee.per].includes(code ?? lineKey))
    const quantity = counted.reduce((sum, { quantityHundredths }) => sum + quantityHundredths, 0)
    const cents = extendedCents(quantity, fee.cents)
    if (cents === 0) return []
    const isCapped = fee.capCents !== null && cents > fee.capCents
    return [
      {
        lineKey: `fee.${fee.key}`,
        kind: 'fee',
        code: null,
        words: fee.words,
        wheels: [...new Set(counted.flatMap(({ wheels }) => wheels))],
        sensor: null,
        priceCode: `fee.${fee.key}`,
        quantityHundredths: isCapped ? 100 : quantity,
        unitCents: isCapped ? (fee.capCents ?? 0) : fee.cents,
        amountCents: isCapped ? (fee.capCents ?? 0) : cents,
        taxClass: fee.taxClass,
      } as const,
    ]
  })
