import { dueCents, paidCents } from '@bayledger/ledger/questions/money'
import type { OrderState } from '@bayledger/ledger/state'
import { english } from '@bayledger/wording/en/english'
import type { ReportContext } from './context.ts'
import { dollars } from './figures.ts'

/** What the customer owes for the visit and has paid, on one line. */
export const priceLine = (state: OrderState, { money }: ReportContext): string =>
  english.report.done.price(sumWords(dueCents(state, money)), sumWords(paidCents(state, money)))

/** A sum as printed; one that was erased says so. */
export const sumWords = (cents: number | null | undefined): string =>
  typeof cents === 'number' ? dollars(cents) : english.report.cells.erased
