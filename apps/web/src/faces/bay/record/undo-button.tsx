import { useEffect, useState } from 'react'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { Button } from '../../../ui/button.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { useOutbox } from './bay-outbox.ts'
import { offerUndo, type Undoable, useUndoable } from './undo-store.ts'
import { useRecord } from './use-record.ts'

/** For ten seconds, for who wrote it: takes the newest entry back by withdrawing it. */
export function UndoButton() {
  const undoable = useUndoable()
  const person = useSignedIn()
  const refused = useOutbox((content) => content.refused)
  if (undoable === null || person?.staffId !== undoable.staffId) return null
  // What the ledger refused is not there to be withdrawn.
  if (refused.some(({ parcel }) => parcel.entries.some(({ id }) => id === undoable.entryId))) return null
  return <Counting key={undoable.entryId} undoable={undoable} />
}

function Counting({ undoable }: { undoable: Undoable }) {
  const { recordAll } = useRecord(undoable.orderId)
  const [busy, setBusy] = useState(false)
  const [now, setNow] = useState(() => performance.now())
  useEffect(() => {
    const ticking = setInterval(() => setNow(performance.now()), 250)
    return () => clearInterval(ticking)
  }, [])
  const seconds = Math.ceil((undoable.until - now) / 1000)
  const isOver = seconds <= 0
  useEffect(() => {
    if (isOver && !busy) offerUndo(null)
  }, [isOver, busy])
  if (isOver && !busy) return null
  return (
    <Button
      className="bay-undo"
      busy={busy}
      onClick={() => {
        setBusy(true)
        void recordAll(
          [
            draftEntry(
              undoable.orderId,
              'entry.struck',
              { entryId: undoable.entryId, reason: 'undone', words: null, secondPerson: null },
              [undoable.entryId],
            ),
          ],
          `undo ${undoable.says}`,
          { form: null, undoes: undoable.entryId },
        ).then((isTaken) => isTaken || setBusy(false))
      }}
    >
      Undo {undoable.says}
      <span aria-hidden="true"> · {Math.max(0, seconds)} s</span>
    </Button>
  )
}
