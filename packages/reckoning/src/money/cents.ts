import { add, type Dinero, dinero, down, halfUp, multiply, toSnapshot, transformScale } from 'dinero.js'
import { USD } from 'dinero.js/currencies'
import type { Cents } from '../estimate.ts'

const dollars = (cents: Cents): Dinero<number, 'USD'> =>
  dinero({ amount: cents, currency: USD }) as Dinero<number, 'USD'>

const centsOf = (amount: Dinero<number, 'USD'>): Cents => toSnapshot(transformScale(amount, 2, halfUp)).amount

/** The sum in cents. */
export const sumCents = (amounts: readonly Cents[]): Cents =>
  centsOf(amounts.reduce((sum, amount) => add(sum, dollars(amount)), dollars(0)))

/** A quantity in hundredths (0.40 hours is 40) times a price in cents, rounded half up to the cent. */
export const extendedCents = (quantityHundredths: number, unitCents: Cents): Cents =>
  centsOf(multiply(dollars(unitCents), { amount: quantityHundredths, scale: 2 }))

/** A share of an amount in cents; `percentThousandths` of 5 000 is 5 %. Rounded half up to the cent. */
export const shareCents = (cents: Cents, percentThousandths: number): Cents =>
  centsOf(multiply(dollars(cents), { amount: percentThousandths, scale: 5 }))

/**
 * Tax on an amount in cents: carried to the third decimal of the dollar, cut there, then rounded up where that
 * decimal is greater than four. Streamlined Sales and Use Tax Agreement, section 324 (as enacted in R.I. Gen. Laws
 * 44-18.1-25 and Kan. Stat. 79-3676). Rounding to the third decimal first would turn 0.6447 into 0.65.
 */
export const taxCents = (cents: Cents, ratePercentThousandths: number): Cents =>
  centsOf(transformScale(multiply(dollars(cents), { amount: ratePercentThousandths, scale: 5 }), 3, down))
