import { longestBodyListedBytes, mostRefusedListed } from '@bayledger/contract/entries'
import { AppError } from '../../../core/app-error.ts'
import type { Deps } from '../../../deps.ts'
import { findRefused, listUnsettled, markSettled, type RefusedRow } from '../store/refused-entries.ts'

/** The oldest refused entries that nobody has settled, of one writer or, with `null`, of everyone, and whether that is all. */
export const listRefused = async (
  deps: Deps,
  staffId: string | null,
): Promise<{ readonly rows: readonly RefusedRow[]; readonly isWhole: boolean }> => {
  const rows = await listUnsettled(deps.pool, deps.shopId, {
    staffId,
    most: mostRefusedListed + 1,
    longestBodyBytes: longestBodyListedBytes,
  })
  return { rows: rows.slice(0, mostRefusedListed), isWhole: rows.length <= mostRefusedListed }
}

/** A refused entry, of one writer or, with `null`, of anyone. Throws `REFUSED_ENTRY_NOT_FOUND` where there is none. */
export const readRefused = async (
  deps: Deps,
  entryId: string,
  staffId: string | null,
): Promise<RefusedRow> => {
  const row = await findRefused(deps.pool, deps.shopId, entryId)
  const isTheirs = staffId === null || (row?.writtenBy.kind === 'staff' && row.writtenBy.staffId === staffId)
  if (row === null || !isTheirs) throw new AppError({ code: 'REFUSED_ENTRY_NOT_FOUND' })
  return row
}

/** Throws `REFUSED_ENTRY_NOT_FOUND` where there is none of this id. */
export const settleRefused = async (deps: Deps, entryId: string): Promise<void> => {
  if (!(await markSettled(deps.pool, deps.shopId, entryId, deps.clock.now())))
    throw new AppError({ code: 'REFUSED_ENTRY_NOT_FOUND' })
  deps.live.wrote('tray')
}
