import type { Merge } from '@bayledger/contract/merges'
import { mayUndo } from './policy.ts'
import type { MergeRow } from './store.ts'

export const presentMerge = (
  row: MergeRow,
  all: readonly MergeRow[],
  names: ReadonlyMap<string, string>,
): Merge => ({
  mergeId: row.id,
  mergedId: row.mergedId,
  survivorId: row.survivorId,
  mergedName: names.get(row.mergedId) ?? '',
  survivorName: names.get(row.survivorId) ?? '',
  taken: Object.keys(row.after ?? {}),
  madeBy: row.maker.name,
  madeAt: row.madeAt.toISOString(),
  undoneBy: row.undoer?.name ?? null,
  undoneAt: row.undoneAt?.toISOString() ?? null,
  mayUndo: mayUndo(row, all),
})
