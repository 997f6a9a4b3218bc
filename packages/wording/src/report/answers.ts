import type { OrderState } from '@bayledger/ledger/state'
import type { TableWording } from './table.ts'

type Decision = OrderState['decisions'][number]
type Refusal = OrderState['refusals'][string]

/** An answer that is no Yes; `until` a day in words. */
export type NoAnswer =
  | { readonly answer: 'none' | 'declined' | 'taken-back' }
  | { readonly answer: 'deferred'; readonly until: string | null }

export type ReportAnswersWording = {
  readonly title: string
  readonly nothingOpen: string
  readonly open: TableWording<'proposal' | 'price' | 'answer' | 'caution'>
  readonly answer: (of: NoAnswer) => string
  readonly noCaution: string
  readonly consents: TableWording<'estimate' | 'by' | 'how' | 'when'>
  readonly version: (revision: number, total: string | null) => string
  readonly channels: Readonly<Record<Decision['consent']['channel'], string>>
  readonly relations: Readonly<Record<Decision['by']['relation'], string>>
  readonly refused: TableWording<'finding' | 'proof' | 'caution' | 'by'>
  readonly signed: string
  /** `name`: `null` where it is not on file. */
  readonly witnessed: (name: string | null) => string
  /** How the vehicle leaves, as the customer chose. */
  readonly leaves: Readonly<Record<NonNullable<Refusal['leaves']>, string>>
}
