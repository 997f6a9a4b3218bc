import type { Kind, PayloadOf } from '@bayledger/ledger/registry'
import type { TableWording } from './table.ts'

export type ReportPeopleWording = {
  readonly title: string
  readonly recorded: TableWording<'person' | 'recorded'>
  /** What a person recorded, by the kind of its entry. */
  readonly kinds: Readonly<Record<Kind, string>>
  readonly kindsOf: (kinds: readonly { readonly kind: string; readonly count: number }[]) => string
  readonly noneWithdrawn: string
  readonly withdrawn: TableWording<'entry' | 'because' | 'by'>
  readonly reasons: Readonly<Record<PayloadOf<'entry.struck'>['reason'], string>>
  readonly reason: (reason: string, words: string | null) => string
  readonly clocks: TableWording<'entry' | 'written' | 'received'>
  readonly entry: (seq: number, kind: string) => string
  /** What a clock contradicted, or a tablet had not heard, and who settled it with which words. */
  readonly settled: (of: {
    readonly what: string
    readonly by: string
    readonly moment: string
    readonly words: string
  }) => string
  readonly driveMinutes: (typed: number, clock: number) => string
  readonly heardLate: (entry: number) => string
  readonly otherTime: (entry: number) => string
}
