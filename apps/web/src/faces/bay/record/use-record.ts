import type { SentSide } from '@bayledger/contract/entries'
import type { Agreeable } from '@bayledger/ledger/agreement'
import { definitionOf, type Kind, type PayloadOf } from '@bayledger/ledger/registry'
import { useQuery } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { hearOrderFirst } from '../../../features/ledger/order-query.ts'
import type { FilledForm, Parcel } from '../../../ledger/parcel.ts'
import { CallProblem, isCallProblem } from '../../../lib/problem.ts'
import { answered } from '../../../ui/after-answer.ts'
import { bayQueryClient } from '../query-client.ts'
import { deviceQuery } from '../session/device-query.ts'
import { sessionLost } from '../session/local-session.ts'
import { useSignedIn } from '../session/signed-in.ts'
import { bayOutbox, heardSeqOf } from './bay-outbox.ts'
import { proveAtBay } from './prove-at-bay.ts'
import { problemHere } from './refuse-here.ts'
import { endUndo, offerUndo, undoMilliseconds } from './undo-store.ts'

export type Recorder = {
  /**
   * Writes one entry; `says` names it in the undo button: "left front gauge". Resolves to whether the screen may go on.
   * `form` is filled in again, should the ledger refuse the entry after the screen has gone on; `null`: one press was all.
   */
  readonly record: <K extends Kind>(
    kind: K,
    payload: PayloadOf<K>,
    says: string,
    form: FilledForm | null,
  ) => Promise<boolean>
  /** Writes entries that go together, with the personal words that they name. */
  readonly recordAll: (
    drafts: readonly WrittenDraft[],
    says: string,
    beside: {
      readonly form: FilledForm | null
      readonly sides?: readonly SentSide[]
      /** Of the second person whom they name. */
      readonly pin?: string
      /** The entry that they take back. The offer to do so goes once nothing can lose them. */
      readonly undoes?: string
    },
  ) => Promise<boolean>
  readonly busy: boolean
  readonly problem: unknown
}

/**
 * The bay's way to write. What the ledger would refuse is said at once, in its own words. Everything else shows at once and
 * is sent behind the screen; nothing waits for the server but the PIN of a second person.
 */
export const useRecord = (orderId: string): Recorder => {
  const person = useSignedIn()
  const deviceId = useQuery({ ...deviceQuery, enabled: false }).data?.deviceId ?? null
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)
  const isUnderWay = useRef(false)

  /** The entries with what the PIN of their second person earns; `null` where it is wrong or cannot be checked. */
  const prove = async (drafts: readonly WrittenDraft[], pin: string): Promise<WrittenDraft[] | null> => {
    try {
      return await Promise.all(
        drafts.map((draft) => proveAtBay(draft as Agreeable, pin, deviceId) as Promise<WrittenDraft>),
      )
    } catch (thrown) {
      const isLock = isCallProblem(thrown, 'SESSION_MISSING') || isCallProblem(thrown, 'SESSION_EXPIRED')
      if (isLock) sessionLost()
      setProblem(isLock ? null : thrown)
      return null
    }
  }

  /** The road opens on what every tablet recorded: the server says it, or this one alone holds the order. */
  const mayLeave = async (): Promise<boolean> => {
    const standing = await hearOrderFirst(bayQueryClient, orderId)
    if (standing === 'unheard') setProblem(roadUnknown)
    return standing !== 'unheard'
  }

  const write: Recorder['recordAll'] = async (drafts, says, { form, sides = [], pin, undoes }) => {
    if (person === null) return false
    if (drafts.some(({ kind }) => kind === 'drive.left') && !(await mayLeave())) return false
    const entries = pin === undefined ? drafts : await prove(drafts, pin)
    if (entries === null) return false
    const { staffId } = person
    const parcel: Parcel = {
      orderId,
      entries,
      sides,
      says,
      staffId,
      deviceId,
      heardSeq: heardSeqOf(orderId),
      form,
    }
    const refusal = problemHere(parcel, bayOutbox.content().onTop)
    if (refusal !== null) {
      setProblem(refusal)
      return false
    }
    if (undoes === undefined) offerUndo(null)
    // The screen goes on, and the next key falls on the next row. Undo is offered once nothing can lose the entry.
    void bayOutbox.post(parcel).then((isKept) => {
      if (undoes !== undefined) return endUndo(undoes)
      const [only, ...others] = entries
      if (isKept && only !== undefined && others.length === 0 && isUndone(only))
        offerUndo({ entryId: only.id, orderId, says, staffId, until: performance.now() + undoMilliseconds })
    })
    return true
  }

  /** The press is answered first. Whatever is pressed until the screen goes on makes no second entry. */
  const recordAll: Recorder['recordAll'] = async (...all) => {
    if (isUnderWay.current) return false
    isUnderWay.current = true
    setProblem(null)
    setBusy(true)
    try {
      await answered()
      return await write(...all)
    } finally {
      isUnderWay.current = false
      setBusy(false)
    }
  }

  return {
    recordAll,
    record: (kind, payload, says, form) => recordAll([draftEntry(orderId, kind, payload)], says, { form }),
    busy,
    problem,
  }
}

const roadUnknown = new CallProblem({
  status: 0,
  code: 'ROAD_UNKNOWN',
  title: 'Another tablet has this vehicle too, and the server does not answer.',
  detail: 'What was recorded there may keep it off the road. Wait for the network, then leave.',
})

/** Whether its writer alone may take it back at once. */
const isUndone = ({ kind }: WrittenDraft): boolean => definitionOf(kind).strikable === 'yes'
