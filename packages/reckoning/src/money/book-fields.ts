import * as z from 'zod/mini'
import { priceWords } from '../words/price-words.ts'

/** Cents; what is wrong with one is said as it is typed. */
export const price = z
  .int(priceWords.amount)
  .check(z.gte(0, priceWords.amount), z.lte(10_000_000, priceWords.amount))
/** Hundredths of an hour in whole tenths. */
export const hours = z
  .int(priceWords.hours)
  .check(z.gte(0, priceWords.hours), z.lte(10_000, priceWords.hours), z.multipleOf(10, priceWords.hours))
/**
 * Thousandths of a percent, from the lowest to the highest percent that a field takes.
 * @source This program's own rule.
 */
export const share = (lowPercent: number, highPercent: number) => {
  const words = priceWords.share(lowPercent, highPercent)
  return z.int(words).check(z.gte(lowPercent * 1_000, words), z.lte(highPercent * 1_000, words))
}
/** The shop's own words for a line that the customer reads. */
export const words = z.string().check(z.trim(), z.minLength(1, priceWords.words), z.maxLength(80))
/** By which a fee, a discount or a season is known in the lines that it made. */
export const key = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,30}$/, priceWords.key))
