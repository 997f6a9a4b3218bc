import type { Kept, RecordSource } from '../../lib/record-source.ts'
import type { RowValues } from '../rows/rows.ts'
import type { RecordRow } from './record-rows.ts'

/** All that the pattern of an owner's page needs to know of one kind of record: its rows are data. */
export type RecordKind<Content, Facts = object> = {
  /** For queries and drafts, as "places". */
  readonly name: string
  readonly words: { readonly one: string; readonly all: string; readonly add: string }
  readonly source: RecordSource<Content, Facts>
  /** May depend on what is filled in so far. */
  readonly rows: (values: RowValues) => readonly RecordRow[]
  /** The rows of a new one before anyone types. */
  readonly blank: RowValues
  readonly toValues: (content: Content) => RowValues
  /** Called only while no row is at fault. */
  readonly toContent: (values: RowValues) => Content
  /** What a list calls it, and the line below that. */
  readonly title: (content: Content) => string
  readonly line: (kept: Kept<Content, Facts>) => string
  /** Other queries that show what is edited here. */
  readonly touches: readonly (readonly string[])[]
  /** Absent: this page only changes what is there. */
  readonly mayAdd?: boolean
  /** What one that was just added still needs before it is of use; `null`: nothing. */
  readonly afterAdding?: (kept: Kept<Content, Facts>) => string | null
  /** There is one of it and no list: its page shows it at once. */
  readonly isOne?: true
}
