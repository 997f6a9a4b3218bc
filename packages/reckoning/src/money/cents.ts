import { add, type Dinero, dinero, down, halfUp, multiply, toSnapshot, transformScale } from 'dinero.js'
import { USD } from 'dinero.js/currencies'
import type { Cents } from '../estimate.ts'

/**
 * The sum of amounts.
 *
 * @units Whole cents.
 * @source Arithmetic.
 */
export const sumCents = (amounts: readonly Cents[]): Cents =>
  centsOf(amounts.reduce((sum, amount) => add(sum, dollars(amount)), dollars(0)))

/**
 * A quantity times a price: labor is tenths of an hour, so 0.4 h is 40 hundredths.
 *
 * @formula quantity · price, rounded half up to the cent; a credit mirrors the charge that it takes back.
 * @units Hundredths of a piece or of an hour, cents a piece or an hour, cents.
 * @source Common practice, no source.
 */
export const extendedCents = (quantityHundredths: number, unitCents: Cents): Cents =>
  mirrored(unitCents, (cents) => centsOf(multiply(dollars(cents), { amount: quantityHundredths, scale: 2 })))

/**
 * A share of an amount.
 *
 * @formula amount · percent, rounded half up to the cent; a credit mirrors the charge that it takes back.
 * @units Cents; thousandths of a percent: 5,000 is 5 %.
 * @source Common practice, no source.
 */
export const shareCents = (cents: Cents, percentThousandths: number): Cents =>
  mirrored(cents, (amount) => centsOf(shareOf(amount, percentThousandths)))

/**
 * A share of an amount that may not be exceeded by any part of a cent.
 *
 * @formula amount · percent, cut to the cent.
 * @units Cents, not under zero; thousandths of a percent.
 * @source This program's own rule: what a law allows at most is not rounded up.
 */
export const shareAtMostCents = (cents: Cents, percentThousandths: number): Cents =>
  toSnapshot(transformScale(shareOf(cents, percentThousandths), 2, down)).amount

/**
 * Sales tax on an amount.
 *
 * @formula amount · rate, carried to the third decimal of the dollar, cut there, then rounded up where that decimal
 * is greater than four. Rounding to the third decimal first would turn 0.6447 into 0.65. A credit gives back the tax
 * that its charge bore.
 * @units Cents; thousandths of a percent: 6,250 is 6.25 %.
 * @source Streamlined Sales and Use Tax Agreement, section 324, read as enacted in R.I. Gen. Laws 44-18.1-25 and Kan.
 * Stat. 79-3676. That a credit mirrors its charge: this program's own rule.
 */
export const taxCents = (cents: Cents, ratePercentThousandths: number): Cents =>
  mirrored(cents, (amount) => centsOf(transformScale(shareOf(amount, ratePercentThousandths), 3, down)))

const dollars = (cents: Cents): Dinero<number, 'USD'> =>
  dinero({ amount: cents, currency: USD }) as Dinero<number, 'USD'>

const centsOf = (amount: Dinero<number, 'USD'>): Cents => toSnapshot(transformScale(amount, 2, halfUp)).amount

const shareOf = (cents: Cents, percentThousandths: number): Dinero<number, 'USD'> =>
  multiply(dollars(cents), { amount: percentThousandths, scale: 5 })

/** The library rounds toward the greater number; money that is given back is to be what was taken. */
const mirrored = (cents: Cents, of: (cents: Cents) => Cents): Cents =>
  cents < 0 ? 0 - of(0 - cents) : of(cents)
