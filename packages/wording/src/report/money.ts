import type { NotedPayment } from '@bayledger/ledger/state'
import type { TableWording } from './table.ts'

/** Sums are formatted, or say that they were erased. */
export type ReportMoneyWording = {
  readonly title: string
  /** What was given back is not open. */
  readonly totals: (price: string, paid: string, open: string, givenBack: string | null) => string
  readonly noEstimate: string
  readonly nothingAuthorized: string
  readonly prices: TableWording<'work' | 'line' | 'price'>
  readonly tax: string
  readonly total: string
  readonly exempt: (certificate: string) => string
  readonly look: { readonly work: string; readonly line: string }
  readonly noPayment: string
  readonly payments: TableWording<'how' | 'amount' | 'by'>
  /** How it went back, and why. */
  readonly givenBack: (method: string, why: string) => string
  readonly methods: Readonly<Record<NotedPayment['method'], string>>
}
