import { dueCents, givenBackCents, paidCents } from '@bayledger/ledger/questions/money'
import type { OrderState } from '@bayledger/ledger/state'
import type { ReportContext } from './context.ts'
import { dollars } from './figures.ts'
import type { Spoken } from './spoken.ts'

/** What the customer owes for the visit and has paid, on one line. */
export const priceLine = (state: OrderState, context: ReportContext): string =>
  context.language.report.done.price(
    sumWords(context, dueCents(state, context.money)),
    sumWords(context, paidCents(state, context.money)),
    backWords(state, context),
  )

/** What was given back, as printed; `null` where nothing was, or where that was erased. */
export const backWords = (state: OrderState, context: ReportContext): string | null => {
  const cents = givenBackCents(state, context.money)
  return cents === null || cents === 0 ? null : dollars(cents)
}

/** A sum as printed; one that was erased says so. */
export const sumWords = (context: Spoken, cents: number | null | undefined): string =>
  typeof cents === 'number' ? dollars(cents) : context.language.report.cells.erased
