import type { SentSide } from '@bayledger/contract/entries'
import { definitionOf, type Kind, type PayloadOf } from '@bayledger/ledger/registry'
import { useQueryClient } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { sessionQuery } from '../../../features/people/queries.ts'
import { isCallProblem } from '../../../lib/problem.ts'
import { offerUndo, undoMilliseconds } from './undo-store.ts'

export type Recorder = {
  /** Writes one entry and resolves to whether the ledger accepted it. `says` names it in the undo button: "left front gauge". */
  readonly record: <K extends Kind>(kind: K, payload: PayloadOf<K>, says: string) => Promise<boolean>
  /** Writes entries that go together, with the personal words that they name. */
  readonly recordAll: (
    drafts: readonly WrittenDraft[],
    says: string,
    sides?: readonly SentSide[],
    /** Of the second person whom they name. */
    pin?: string,
  ) => Promise<boolean>
  readonly busy: boolean
  readonly problem: unknown
}

/**
 * The bay's way to write. What failed for want of a network keeps its id: pressing again sends the same entry, and
 * the server answers the second delivery as known. A missing session is not shown as a problem: the lock prompts for a
 * PIN, and the input is kept.
 */
export const useRecord = (orderId: string): Recorder => {
  const client = useQueryClient()
  const write = useWriteEntries(orderId)
  const [problem, setProblem] = useState<unknown>(null)
  const unanswered = useRef<{ content: string; draft: WrittenDraft } | null>(null)

  const recordAll: Recorder['recordAll'] = async (drafts, says, sides = [], pin) => {
    setProblem(null)
    try {
      await write.mutateAsync({ entries: drafts, sides, ...(pin === undefined ? {} : { pin }) })
    } catch (thrown) {
      const isLock =
        isCallProblem(thrown) && thrown.body.status === 401 && !isCallProblem(thrown, 'PIN_REFUSED')
      setProblem(isLock ? null : thrown)
      if (isCallProblem(thrown) && thrown.body.status !== 0 && thrown.body.status < 500)
        unanswered.current = null
      return false
    }
    unanswered.current = null
    const [only, ...others] = drafts
    const staffId = client.getQueryData(sessionQuery.queryKey)?.staff.staffId
    const mayUndo = only !== undefined && others.length === 0 && definitionOf(only.kind).strikable === 'yes'
    offerUndo(
      mayUndo && staffId !== undefined
        ? { entryId: only.id, orderId, says, staffId, until: performance.now() + undoMilliseconds }
        : null,
    )
    return true
  }

  return {
    recordAll,
    record: (kind, payload, says) => {
      const content = JSON.stringify([kind, payload])
      const again = unanswered.current?.content === content ? unanswered.current.draft : null
      const draft: WrittenDraft = again ?? draftEntry(orderId, kind, payload)
      unanswered.current = { content, draft }
      return recordAll([draft], says)
    },
    busy: write.isPending,
    problem,
  }
}
