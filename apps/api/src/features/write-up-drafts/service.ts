import type { WriteUpDraft } from '@bayledger/contract/write-up-drafts'
import type { StaffActor } from '../../core/actor.ts'
import type { Deps } from '../../deps.ts'
import * as store from './store.ts'

/** Write-ups that were begun and not opened, newest first. */
export const listDrafts = async ({ pool, shopId }: Deps): Promise<WriteUpDraft[]> => {
  const rows = await store.listDrafts(pool, shopId)
  return rows.map((row) => ({ ...row, updatedAt: row.updatedAt.toISOString() }))
}

/** Keeps the newest of a write-up. An order has its draft's id: what comes after it was opened is late, and is left out. */
export const keepDraft = (
  { pool, shopId, clock }: Deps,
  actor: StaffActor,
  draftId: string,
  body: object,
): Promise<void> => store.keepDraft(pool, { shopId, draftId, staffId: actor.staffId, body, at: clock.now() })

export const deleteDraft = ({ pool, shopId }: Deps, draftId: string): Promise<void> =>
  store.deleteDraft(pool, shopId, draftId)
