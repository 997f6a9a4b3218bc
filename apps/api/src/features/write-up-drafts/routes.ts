import * as contract from '@bayledger/contract/write-up-drafts'
import { type Binding, bind } from '../../http/binding.ts'
import { deleteDraft, keepDraft, listDrafts } from './store.ts'

export const writeUpDraftRoutes: readonly Binding[] = [
  bind(contract.listWriteUpDrafts)(async ({ deps }) => {
    const rows = await listDrafts(deps.pool, deps.shopId)
    return {
      status: 200,
      body: { drafts: rows.map((row) => ({ ...row, updatedAt: row.updatedAt.toISOString() })) },
    }
  }),
  bind(contract.putWriteUpDraft)(async ({ deps, actor, params, body }) => {
    await keepDraft(deps.pool, {
      shopId: deps.shopId,
      draftId: params.draftId,
      staffId: actor.staffId,
      body: body.body,
      at: deps.clock.now(),
    })
    return { status: 204 }
  }),
  bind(contract.deleteWriteUpDraft)(async ({ deps, params }) => {
    await deleteDraft(deps.pool, deps.shopId, params.draftId)
    return { status: 204 }
  }),
]
