import { dueCents, paidCents } from '@bayledger/ledger/questions/money'
import type { OrderState } from '@bayledger/ledger/state'
import type { ReportContext } from './context.ts'
import { dollars } from './figures.ts'

/** What the customer owes for the visit and has paid, on one line. */
export const priceLine = (state: OrderState, { money }: ReportContext): string => {
  const price = dueCents(state, money)
  const paid = paidCents(state, money)
  return `Price with tax: ${sumWords(price)}. Paid: ${sumWords(paid)}.`
}

/** A sum as printed; one that was erased says so. */
export const sumWords = (cents: number | null | undefined): string =>
  typeof cents === 'number' ? dollars(cents) : 'erased on request'
