import type { PayloadOf } from '@bayledger/ledger/registry'
import { paymentFaults } from '../../../lib/fault-words.ts'
import type { TypedFigure } from '../../../ui/number-text.ts'

export type PaymentMethod = PayloadOf<'payment.noted'>['method']

export const methodWords: Readonly<Record<PaymentMethod, string>> = {
  card: 'card',
  cash: 'cash',
  check: 'check',
  account: 'account',
  'none-due': 'nothing due',
}

export const paymentMethods = (['card', 'cash', 'check', 'account'] as const).map((value) => ({
  value,
  label: methodWords[value],
}))

/** Whole cents from dollars as typed; `null` where it is no amount with at most two decimals. */
export const centsOf = (typed: TypedFigure): number | null => {
  if (typeof typed !== 'number') return null
  const cents = Math.round(typed * 100)
  return Math.abs(typed * 100 - cents) < 0.000_01 ? cents : null
}

/** What is missing before a payment can be noted, in words. */
export const missingInPayment = (typed: TypedFigure, method: PaymentMethod | null): string | undefined => {
  const cents = centsOf(typed)
  if (cents === null) return paymentFaults.noAmount
  if (cents === 0) return paymentFaults.nothing
  return method === null ? paymentFaults.noMethod : undefined
}

/** What is missing before money can be given back, in words. `leftCents`: what the method has left. */
export const missingInRefund = ({
  typed,
  method,
  leftCents,
  why,
}: {
  readonly typed: TypedFigure
  readonly method: PaymentMethod | null
  readonly leftCents: number
  readonly why: string
}): string | undefined => {
  if (method === null) return paymentFaults.noMethod
  const cents = centsOf(typed)
  if (cents === null) return paymentFaults.noAmount
  if (cents <= 0) return paymentFaults.noRefund
  if (cents > leftCents) return paymentFaults.tooMuchBack
  return why.trim() === '' ? paymentFaults.noReason : undefined
}
