import { useEffect, useState } from 'react'
import { Button } from '../../../ui/button.tsx'
import { useSignedIn } from '../session/signed-in.ts'
import { offerUndo, type Undoable, useUndoable } from './undo-store.ts'
import { useRecord } from './use-record.ts'

/** For ten seconds, for who wrote it: takes the newest entry back by withdrawing it. */
export function UndoButton() {
  const undoable = useUndoable()
  const person = useSignedIn()
  if (undoable === null || person?.staffId !== undoable.staffId) return null
  return <Counting key={undoable.entryId} undoable={undoable} />
}

function Counting({ undoable }: { undoable: Undoable }) {
  const { record, busy } = useRecord(undoable.orderId)
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
      onClick={() =>
        void record(
          'entry.struck',
          { entryId: undoable.entryId, reason: 'undone', words: null, secondPerson: null },
          'undo',
        )
      }
    >
      Undo {undoable.says}
      <span aria-hidden="true"> · {Math.max(0, seconds)} s</span>
    </Button>
  )
}
