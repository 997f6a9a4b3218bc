import { deskRoles } from '@bayledger/ledger/role'
import * as z from 'zod/mini'
import { endpoint } from './endpoint.ts'
import { Id, Instant } from './identity.ts'

/** What a desk has typed of an order that is not opened yet; `body` is the screen's own, and read by it alone. */
const DraftBody = z.record(z.string(), z.unknown()).check(
  z.refine((body) => JSON.stringify(body).length <= 40_000, {
    error: 'A write-up holds at most 40,000 characters',
  }),
)

export const WriteUpDraft = z.strictObject({
  draftId: Id,
  /** Who typed last. */
  by: z.string(),
  updatedAt: Instant,
  body: z.record(z.string(), z.unknown()),
})
export type WriteUpDraft = z.infer<typeof WriteUpDraft>

const access = { who: 'desk', roles: deskRoles } as const
const path = '/api/write-up-drafts/:draftId'
const params = z.strictObject({ draftId: Id })

export const listWriteUpDrafts = endpoint({
  operationId: 'listWriteUpDrafts',
  summary: 'Write-ups that were begun at any desk and not opened, newest first.',
  method: 'GET',
  path: '/api/write-up-drafts',
  access,
  replies: { 200: z.strictObject({ drafts: z.array(WriteUpDraft).check(z.maxLength(30)) }) },
  problems: [],
})

export const putWriteUpDraft = endpoint({
  operationId: 'putWriteUpDraft',
  summary: 'Keep what is typed of a write-up; the newest is kept.',
  method: 'PUT',
  path,
  access,
  params,
  body: z.strictObject({ body: DraftBody }),
  replies: { 204: null },
  problems: [],
})

export const deleteWriteUpDraft = endpoint({
  operationId: 'deleteWriteUpDraft',
  summary: 'Throw a write-up away that was begun; one that is gone stays gone.',
  method: 'DELETE',
  path,
  access,
  params,
  replies: { 204: null },
  problems: [],
})
