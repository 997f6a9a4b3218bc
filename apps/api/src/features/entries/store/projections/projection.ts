import type { Entry } from '@bayledger/ledger/entry'
import type { SideKind } from '@bayledger/ledger/side-kinds'
import type { HeadProjection } from './head.ts'

/** A side that came with an entry, to be kept in the table of its kind. */
export type SideToKeep = {
  readonly side: SideKind
  readonly digest: string
  readonly salt: Uint8Array
  readonly text: string
}

/** A message that goes with an entry. */
export type MessageToKeep = {
  /** The entry that causes it. */
  readonly causedBy: string
  readonly purpose: 'estimate' | 'report' | 'retorque' | 'deferred' | 'new-time'
  readonly channel: 'email' | 'text'
  readonly dueAt: string
  readonly inQuietHours: boolean
  /** Where the entry names the link already. */
  readonly linkId: string | null
}

/** What one order gains in one write. */
export type OrderWrite = {
  readonly shopId: string
  readonly orderId: string
  /** The head that was admitted against: nothing is written unless it is still that one. */
  readonly after: number
  readonly entries: readonly Entry[]
  readonly head: HeadProjection
  /** An entry of this order by its id, written before or now. */
  readonly entryById: (id: string) => Entry | undefined
  readonly sides: readonly SideToKeep[]
  /** Messages that were asked for with these entries. */
  readonly messages: readonly MessageToKeep[]
}

/** The columns of a projection's rows by name, with their PostgreSQL types; every row also names its order. */
export type Columns<Row> = { readonly [Name in keyof Row & string]: string }

/**
 * Rows of another table that entries cause. One file each: what rows a write makes, and the statements that store
 * them. `sql` gives common table expressions; it reads `from`, which holds the rows of those orders alone whose head
 * has just moved.
 */
export type Projection<Row extends object = Record<string, unknown>> = {
  readonly name: string
  readonly columns: Columns<Row>
  readonly rowsOf: (write: OrderWrite) => readonly Row[]
  readonly sql: (from: string, rebuilding: boolean) => string
  /** Whether a rebuild fills an emptied table again, adds what is missing, or leaves what was counted with entries. */
  readonly rebuild: { readonly empties: string } | 'missing-rows' | 'never'
}

/** Forgets the type of a projection's rows, so that projections fit in one list. */
export const projection = <Row extends object>(definition: Projection<Row>): Projection =>
  definition as unknown as Projection
