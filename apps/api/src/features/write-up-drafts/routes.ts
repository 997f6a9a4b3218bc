import * as contract from '@bayledger/contract/write-up-drafts'
import { type Binding, bind } from '../../http/binding.ts'
import { deleteDraft, keepDraft, listDrafts } from './service.ts'

export const writeUpDraftRoutes: readonly Binding[] = [
  bind(contract.listWriteUpDrafts)(async ({ deps }) => ({
    status: 200,
    body: { drafts: await listDrafts(deps) },
  })),
  bind(contract.putWriteUpDraft)(async ({ deps, actor, params, body }) => {
    await keepDraft(deps, actor, params.draftId, body.body)
    return { status: 204 }
  }),
  bind(contract.deleteWriteUpDraft)(async ({ deps, params }) => {
    await deleteDraft(deps, params.draftId)
    return { status: 204 }
  }),
]
