import * as z from 'zod/mini'
import type { EstimateLine, TaxClass } from '../estimate.ts'
import { priceWords } from '../words/price-words.ts'
import { key, price, words } from './book-fields.ts'

/** What an advisor adds to an estimate by hand, at the price of the book. `outside`: work that another shop does. */
export const SoldItem = z
  .strictObject({
    key,
    words,
    kind: z.enum(['tire', 'part', 'labor', 'outside', 'fee']),
    /** Of a tire: what its sidewall prints, as 225/65R17 102H. */
    size: z.nullable(z.string().check(z.trim(), z.minLength(1), z.maxLength(40))),
    cents: price,
    /** Charged until the old part comes back; `null`: there is none. */
    depositCents: z.nullable(price),
  })
  .check(
    z.refine(({ kind, size }) => (kind === 'tire') === (size !== null), {
      path: ['size'],
      error: priceWords.sizeOfTire,
    }),
  )
export type SoldItem = z.infer<typeof SoldItem>

type SoldKind = SoldItem['kind']

/**
 * How a line that was added by hand is taxed. Work done elsewhere is taxed as labor.
 *
 * @source This program's own rule; which classes are taxed, the shop's price book says.
 */
export const taxClassOf: Readonly<Record<SoldKind, TaxClass>> = {
  tire: 'tire',
  part: 'parts',
  labor: 'labor',
  outside: 'labor',
  fee: 'fee',
}

/**
 * What a line that was added by hand is.
 *
 * @source This program's own rule.
 */
export const lineKindOf: Readonly<Record<SoldKind, EstimateLine['kind']>> = {
  tire: 'part',
  part: 'part',
  labor: 'labor',
  outside: 'labor',
  fee: 'fee',
}
