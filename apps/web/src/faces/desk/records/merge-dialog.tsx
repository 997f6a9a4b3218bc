import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useLayoutEffect, useRef, useState } from 'react'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Line, Lines } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import type { RecordKind, ShownRecord } from './record-kind.ts'

type MergeDialogProps = { kind: RecordKind; id: string; onClose: () => void }

/** Finds the other record, shows both side by side and asks which value of each field stays. */
export function MergeDialog({ kind, id, onClose }: MergeDialogProps) {
  const [otherId, setOtherId] = useState<string | null>(null)
  const both = useQuery({
    queryKey: ['records', kind.subject, id, otherId],
    queryFn: async () => ({ own: await kind.read(id), other: await kind.read(otherId ?? '') }),
    enabled: otherId !== null,
    staleTime: 0,
    gcTime: 0,
  })
  return (
    <Dialog title={`This ${kind.subject} is on file twice`} onClose={onClose}>
      <div className="stack">
        {otherId === null ? <FindOther kind={kind} id={id} onPick={setOtherId} /> : null}
        {otherId !== null && both.isPending ? <StatusLine>Reading both records.</StatusLine> : null}
        {both.isError ? (
          <ProblemNotice problem={problemText(both.error)} onRetry={() => void both.refetch()} />
        ) : null}
        {both.data === undefined ? null : (
          <SideBySide
            key={both.dataUpdatedAt}
            kind={kind}
            {...both.data}
            onOther={() => setOtherId(null)}
            onAgain={() => void both.refetch()}
            onClose={onClose}
          />
        )}
      </div>
    </Dialog>
  )
}

function FindOther({ kind, id, onPick }: { kind: RecordKind; id: string; onPick: (id: string) => void }) {
  const [typed, setTyped] = useState('')
  const wanted = typed.trim()
  const found = useQuery({
    queryKey: ['records', kind.subject, 'find', wanted],
    queryFn: () => kind.find(wanted),
    enabled: wanted.length >= 2,
  })
  const others = (found.data ?? []).filter(
    (record, at, all) => record.id !== id && all.findIndex((one) => one.id === record.id) === at,
  )
  return (
    <>
      <TextField label={kind.searchLabel} value={typed} onChange={setTyped} />
      {found.isError ? <ProblemNotice problem={problemText(found.error)} /> : null}
      <ul className="matches" aria-label="Other records">
        {others.map((record) => (
          <li key={record.id}>
            <Button onClick={() => onPick(record.id)}>{record.words}</Button>
          </li>
        ))}
      </ul>
      {found.isSuccess && others.length === 0 ? <p>No other record is found so.</p> : null}
    </>
  )
}

type SideBySideProps = {
  kind: RecordKind
  own: ShownRecord
  other: ShownRecord
  onOther: () => void
  onAgain: () => void
  onClose: () => void
}

function SideBySide({ kind, own, other, onOther, onAgain, onClose }: SideBySideProps) {
  const client = useQueryClient()
  const begin = useRef<HTMLParagraphElement>(null)
  // The record that was picked from the list is gone with it.
  useLayoutEffect(() => begin.current?.focus(), [])
  const differing = kind.fields.filter(({ field }) => own.words[field] !== other.words[field])
  // What one record lacks, the other may give; else this one's stays until somebody chooses.
  const [taken, setTaken] = useState(() =>
    differing.filter(({ field }) => own.words[field] === null).map(({ field }) => field),
  )
  const merge = useMutation({
    mutationFn: () => kind.merge(own, other, taken),
    onSuccess: async () => {
      onClose()
      await client.invalidateQueries()
    },
  })
  const alike = kind.fields.filter(
    ({ field }) => own.words[field] === other.words[field] && own.words[field] !== null,
  )
  if (other.id === own.id)
    return (
      <>
        <p>Both are the same record already.</p>
        <Button onClick={onOther}>Choose another record</Button>
      </>
    )
  return (
    <>
      <p ref={begin} tabIndex={-1}>
        <strong>{own.name}</strong> stays. <strong>{other.name}</strong> becomes part of it: its orders,
        vehicles, consents and messages follow, its old address leads here. Nothing is deleted, and you can
        undo it.
      </p>
      {differing.map(({ field, label }) => (
        <ChoiceGroup
          key={field}
          label={label}
          options={[
            { value: 'own', label: own.words[field] ?? 'empty', detail: 'this record' },
            { value: 'other', label: other.words[field] ?? 'empty', detail: 'the other record' },
          ]}
          value={taken.includes(field) ? 'other' : 'own'}
          onChange={(side) =>
            setTaken(side === 'other' ? [...taken, field] : taken.filter((one) => one !== field))
          }
        />
      ))}
      {alike.length === 0 ? null : (
        <Lines>
          {alike.map(({ field, label }) => (
            <Line key={field} name={`${label}, in both`}>
              {own.words[field]}
            </Line>
          ))}
        </Lines>
      )}
      {merge.isError ? <ProblemNotice problem={problemText(merge.error)} /> : null}
      <div className="row">
        {merge.isError ? <Button onClick={onAgain}>Read both again</Button> : null}
        <Button look="main" busy={merge.isPending} onClick={() => merge.mutate()}>
          Make them one
        </Button>
        <Button onClick={onOther}>Choose another record</Button>
      </div>
    </>
  )
}
