import type { SentSide } from '@bayledger/contract/entries'
import { definitionOf, type Kind, type PayloadOf } from '@bayledger/ledger/registry'
import { useQuery } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import type { FilledForm, Parcel } from '../../../ledger/parcel.ts'
import { isCallProblem } from '../../../lib/problem.ts'
import { deviceQuery } from '../session/device-query.ts'
import { useSignedIn } from '../session/signed-in.ts'
import { bayOutbox } from './bay-outbox.ts'
import { offerUndo, undoMilliseconds } from './undo-store.ts'

export type Recorder = {
  /**
   * Writes one entry; `says` names it in the undo button: "left front gauge". Resolves to whether the screen may go on.
   * `form` is filled in again, should the ledger refuse the entry after the screen has gone on.
   */
  readonly record: <K extends Kind>(
    kind: K,
    payload: PayloadOf<K>,
    says: string,
    form?: FilledForm,
  ) => Promise<boolean>
  /** Writes entries that go together, with the personal words that they name. */
  readonly recordAll: (
    drafts: readonly WrittenDraft[],
    says: string,
    beside?: {
      readonly sides?: readonly SentSide[]
      /** Of the second person whom they name. */
      readonly pin?: string
      readonly form?: FilledForm
    },
  ) => Promise<boolean>
  readonly busy: boolean
  readonly problem: unknown
}

/** Whether the screen goes on at once and the entry is sent behind it: what its writer alone may take back. */
const goesBehind = ({ kind }: WrittenDraft): boolean => {
  const { strikable, writtenWhere } = definitionOf(kind)
  return strikable === 'yes' && writtenWhere === 'anywhere' && !kind.startsWith('diagnosis.')
}

/**
 * The bay's way to write. A reading or a step shows at once and is sent behind the screen. What a second person has to
 * take back (a wheel off, a sealed round, a check) waits for the ledger's own answer, as do findings and withdrawals.
 */
export const useRecord = (orderId: string): Recorder => {
  const person = useSignedIn()
  const device = useQuery({ ...deviceQuery, enabled: false }).data
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)
  const unanswered = useRef<{ content: string; draft: WrittenDraft } | null>(null)

  const recordAll: Recorder['recordAll'] = async (drafts, says, { sides = [], pin, form } = {}) => {
    if (person === null) return false
    setProblem(null)
    const { staffId } = person
    const parcel: Parcel = {
      orderId,
      entries: drafts,
      sides,
      says,
      staffId,
      deviceId: device?.deviceId ?? null,
      form: form ?? null,
    }
    const [only, ...others] = drafts
    if (pin === undefined && drafts.every(goesBehind)) {
      offerUndo(null)
      // The screen goes on, and the next key falls on the next row. Undo is offered once nothing can lose the entry.
      void bayOutbox.post(parcel).then((isKept) => {
        if (isKept && only !== undefined && others.length === 0)
          offerUndo({ entryId: only.id, orderId, says, staffId, until: performance.now() + undoMilliseconds })
      })
      return true
    }
    setBusy(true)
    const thrown = await bayOutbox.sendAndWait(parcel, pin)
    setBusy(false)
    if (thrown === null) {
      unanswered.current = null
      offerUndo(null)
      return true
    }
    const isLock =
      isCallProblem(thrown) && thrown.body.status === 401 && !isCallProblem(thrown, 'PIN_REFUSED')
    setProblem(isLock ? null : thrown)
    if (isCallProblem(thrown) && thrown.body.status !== 0 && thrown.body.status < 500)
      unanswered.current = null
    return false
  }

  return {
    recordAll,
    record: (kind, payload, says, form) => {
      // What failed for want of a network keeps its id: the server answers a second delivery as known.
      const content = JSON.stringify([kind, payload])
      const again = unanswered.current?.content === content ? unanswered.current.draft : null
      const draft: WrittenDraft = again ?? draftEntry(orderId, kind, payload)
      unanswered.current = goesBehind(draft) ? null : { content, draft }
      return recordAll([draft], says, form === undefined ? {} : { form })
    },
    busy,
    problem,
  }
}
