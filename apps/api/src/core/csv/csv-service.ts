import type { CsvApplied, CsvPreview } from '@bayledger/contract/csv'
import type { Deps } from '../../deps.ts'
import type { StaffActor } from '../actor.ts'
import type { GivenImport, ImportKey } from './apply-import.ts'
import type { TellProgress } from './import-progress.ts'

/** What one list does to go out as CSV and come back. */
export type CsvService = {
  readonly write: (deps: Deps) => Promise<Uint8Array>
  readonly preview: (deps: Deps, bytes: Uint8Array, tell: TellProgress) => Promise<CsvPreview>
  readonly apply: (
    deps: Deps,
    actor: StaffActor,
    key: ImportKey,
    given: GivenImport,
    tell: TellProgress,
  ) => Promise<CsvApplied>
}
