import { type Merge, undoMerge } from '@bayledger/contract/merges'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { lazy, Suspense, useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { useShopClock } from '../shop-clock.ts'
import type { RecordKind } from './record-kind.ts'

/** Opened seldom. */
const MergeDialog = lazy(async () => {
  const { MergeDialog: Loaded } = await import('./merge-dialog.tsx')
  return { default: Loaded }
})

/** Records of this customer or vehicle that were made one, by whom and when, and what undoes it. */
export function MergesPart({ kind, id }: { kind: RecordKind; id: string }) {
  const [isOpen, setOpen] = useState(false)
  const client = useQueryClient()
  const history = useQuery({
    queryKey: ['records', kind.subject, id, 'merges'],
    queryFn: () => kind.history(id),
    staleTime: 0,
  })
  const undo = useMutation({
    mutationFn: (mergeId: string) => call(undoMerge, { params: { mergeId } }),
    onSettled: () => client.invalidateQueries(),
  })
  return (
    <Section title="Records made one">
      <div className="stack">
        {history.isError ? (
          <ProblemNotice problem={problemText(history.error)} onRetry={() => void history.refetch()} />
        ) : null}
        {undo.isError ? <ProblemNotice problem={problemText(undo.error)} /> : null}
        {history.data?.map((merge) => (
          <MergeRow
            key={merge.mergeId}
            merge={merge}
            busy={undo.isPending}
            onUndo={() => undo.mutate(merge.mergeId)}
          />
        ))}
        <div className="row">
          <Button onClick={() => setOpen(true)}>This {kind.subject} is on file twice</Button>
        </div>
        {isOpen ? (
          <Suspense>
            <MergeDialog kind={kind} id={id} onClose={() => setOpen(false)} />
          </Suspense>
        ) : null}
      </div>
    </Section>
  )
}

type MergeRowProps = { merge: Merge; busy: boolean; onUndo: () => void }

function MergeRow({ merge, busy, onUndo }: MergeRowProps) {
  const clock = useShopClock()
  const now = new Date().toISOString()
  const { mergedName, survivorName, madeBy, madeAt, undoneBy, undoneAt, mayUndo } = merge
  return (
    <div className="row">
      <p>
        {`${mergedName} became part of ${survivorName}: ${madeBy}, ${clockTimeOrDay(madeAt, now, clock)}.`}
        {undoneAt === null ? '' : ` ${undoneBy} undid it, ${clockTimeOrDay(undoneAt, now, clock)}.`}
      </p>
      {mayUndo ? (
        <Button busy={busy} onClick={onUndo} aria-label={`Undo: take ${mergedName} apart again`}>
          Undo
        </Button>
      ) : null}
    </div>
  )
}
