import { useQuery, useQueryClient } from '@tanstack/react-query'
import { type ReactNode, useEffect, useRef, useState } from 'react'
import type { Clock } from '../../lib/format.ts'
import { problemText } from '../../lib/problem.ts'
import type { Kept } from '../../lib/record-source.ts'
import { Button } from '../button.tsx'
import { ProblemNotice } from '../problem-notice.tsx'
import { StatusLine } from '../sentence.tsx'
import { TextField } from '../text-field.tsx'
import { RecordForm } from './record-form.tsx'
import { RecordHistory } from './record-history.tsx'
import type { RecordKind } from './record-kind.ts'
import { isFoundIn } from './record-rows.ts'
import { useRecordEdit } from './use-record-edit.ts'

type RecordPageProps<Content, Facts> = {
  kind: RecordKind<Content, Facts>
  /** The record that is open, `new` for one that is added, `null` for the list. */
  open: string | null
  onOpen: (id: string | null) => void
  clock: Clock
  /** Buttons that write the list to CSV and read it back. */
  csv?: ReactNode
  /** What else there is to do with one record, below its rows. */
  beside?: (kept: Kept<Content, Facts>) => ReactNode
}

/** One page of an owner: the list, or the editor of one record with its history. */
export function RecordPage<Content, Facts>(props: RecordPageProps<Content, Facts>) {
  const { kind, open, onOpen, csv } = props
  const [added, setAdded] = useState<string | null>(null)
  const list = useQuery({ queryKey: [kind.name], queryFn: ({ signal }) => kind.source.list(signal) })
  if (list.isError)
    return <ProblemNotice problem={problemText(list.error)} onRetry={() => void list.refetch()} />
  if (list.data === undefined) return <StatusLine>Reading the {kind.words.all}.</StatusLine>
  if (kind.isOne) {
    const [only] = list.data
    return only === undefined ? null : (
      <>
        {csv === undefined ? null : <div className="record-tools">{csv}</div>}
        <OpenRecord {...props} kept={only} />
      </>
    )
  }
  if (open === null) return <RecordList kind={kind} records={list.data} onOpen={onOpen} csv={csv} />
  const kept = list.data.find(({ id }) => id === open) ?? null
  return (
    <>
      <p>
        <Button onClick={() => onOpen(null)}>All {kind.words.all}</Button>
      </p>
      {kept === null && open !== 'new' ? (
        <p>This shop has no such {kind.words.one} any more.</p>
      ) : (
        <OpenRecord key={open} {...props} kept={kept} isAdded={open === added} onAdded={setAdded} />
      )}
    </>
  )
}

type RecordListProps<Content, Facts> = Pick<RecordPageProps<Content, Facts>, 'kind' | 'csv'> & {
  records: readonly Kept<Content, Facts>[]
  onOpen: (id: string) => void
}

function RecordList<Content, Facts>({ kind, records, onOpen, csv }: RecordListProps<Content, Facts>) {
  const [searched, setSearched] = useState('')
  const found = records.filter((kept) => isFoundIn(searched, [kind.title(kept.content), kind.line(kept)]))
  return (
    <div className="stack">
      <div className="record-tools">
        <TextField label="Search" type="search" value={searched} onChange={setSearched} />
        {kind.mayAdd ? (
          <Button look="main" onClick={() => onOpen('new')}>
            {kind.words.add}
          </Button>
        ) : null}
        {csv}
      </div>
      <ul className="record-list">
        {found.map((kept) => (
          <li key={kept.id}>
            <button type="button" onClick={() => onOpen(kept.id)}>
              <strong>{kind.title(kept.content)}</strong>
              <span className="quiet">{kind.line(kept)}</span>
            </button>
          </li>
        ))}
      </ul>
      <StatusLine>{countWords(found.length, records.length, kind.words)}</StatusLine>
    </div>
  )
}

const countWords = (found: number, all: number, words: { one: string; all: string }): string => {
  if (all === 0) return `There are no ${words.all} yet.`
  const named = `${all} ${all === 1 ? words.one : words.all}`
  return found === all ? `${named}.` : `${found} of ${named}.`
}

function OpenRecord<Content, Facts>({
  kind,
  kept,
  onOpen,
  clock,
  beside,
  isAdded = false,
  onAdded,
}: RecordPageProps<Content, Facts> & {
  kept: Kept<Content, Facts> | null
  /** It was just added on this page. */
  isAdded?: boolean
  onAdded?: (id: string) => void
}) {
  const client = useQueryClient()
  const [savedWord, setSavedWord] = useState<string | null>(null)
  const read = useQuery({
    queryKey: [kind.name, kept?.id ?? 'new'],
    queryFn: ({ signal }) => (kept === null ? null : kind.source.read(kept.id, signal)),
    enabled: kept !== null,
  })
  const readAgain = () =>
    Promise.all([[kind.name], ...kind.touches].map((queryKey) => client.invalidateQueries({ queryKey })))
  const onSaved = async (saved: Kept<Content, Facts>) => {
    client.setQueryData<Kept<Content, Facts>[]>([kind.name], (list = []) => [
      ...list.filter(({ id }) => id !== saved.id),
      saved,
    ])
    setSavedWord(`Saved. This is version ${saved.version}.`)
    await readAgain()
    if (kept !== null) return
    onAdded?.(saved.id)
    onOpen(saved.id)
  }
  const edit = useRecordEdit(kind, kept, onSaved, readAgain)
  const page = useRef<HTMLDivElement>(null)
  // What was pressed to come here is gone: a new record begins in its first field, another at its name.
  const beginsAt = kind.isOne ? null : kept === null ? '.record-form input' : 'h2'
  useEffect(() => {
    if (beginsAt !== null) page.current?.querySelector<HTMLElement>(beginsAt)?.focus()
  }, [beginsAt])
  return (
    <div className="stack" ref={page}>
      <h2 tabIndex={-1}>{kept === null ? kind.words.add : kind.title(kept.content)}</h2>
      {isAdded && kept !== null ? (
        <StatusLine>{['Added.', kind.afterAdding?.(kept)].filter(Boolean).join(' ')}</StatusLine>
      ) : null}
      <RecordForm
        edit={edit}
        saveWord={kept === null ? kind.words.add : 'Save'}
        savedWord={edit.isChanged ? null : savedWord}
      />
      {kept === null ? null : beside?.(kept)}
      {kept === null || read.data == null ? null : (
        <RecordHistory
          history={read.data.history}
          rows={kind.rows}
          toValues={(content) => kind.toValues(content as Content)}
          clock={clock}
          now={new Date().toISOString()}
          busy={edit.busy}
          onWriteAgain={edit.saveValues}
        />
      )}
    </div>
  )
}
