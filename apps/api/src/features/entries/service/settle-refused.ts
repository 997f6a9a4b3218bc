import { AppError } from '../../../core/app-error.ts'
import type { Deps } from '../../../deps.ts'
import { listUnsettled, markSettled } from '../store/refused-entries.ts'

/** Refused entries that nobody has settled, of one writer or, with `null`, of everyone. */
export const listRefused = (deps: Deps, staffId: string | null) =>
  listUnsettled(deps.pool, deps.shopId, staffId)

/** Throws `REFUSED_ENTRY_NOT_FOUND` where there is none of this id. */
export const settleRefused = async (deps: Deps, entryId: string): Promise<void> => {
  if (!(await markSettled(deps.pool, deps.shopId, entryId, deps.clock.now())))
    throw new AppError({ code: 'REFUSED_ENTRY_NOT_FOUND' })
  deps.live.wrote('tray')
}
