import { useMutation, useQuery } from '@tanstack/react-query'
import { useId, useState } from 'react'
import type { CsvShown, CsvSource } from '../../lib/csv-source.ts'
import { problemText } from '../../lib/problem.ts'
import { Button } from '../button.tsx'
import { Dialog } from '../dialog.tsx'
import { LongWork } from '../long-work.tsx'
import { ProblemNotice } from '../problem-notice.tsx'
import { StatusLine } from '../sentence.tsx'
import { csvCounts, csvProgress } from './csv-words.ts'

type CsvExchangeProps = {
  source: CsvSource
  /** The name of the file that is written, as "stock". */
  name: string
  onApplied: () => unknown
}

/** A list written as CSV and read back: what a file would do is shown before anything is done. */
export function CsvExchange({ source, name, onApplied }: CsvExchangeProps) {
  const [isOpen, setOpen] = useState(false)
  const writing = useMutation({ mutationFn: source.write, onSuccess: (file) => save(file, `${name}.csv`) })
  return (
    <>
      <Button busy={writing.isPending} onClick={() => writing.mutate()}>
        Write to CSV
      </Button>
      <Button onClick={() => setOpen(true)}>Read a CSV file</Button>
      {writing.isError ? <ProblemNotice problem={problemText(writing.error)} /> : null}
      {isOpen ? <CsvImport source={source} onApplied={onApplied} onClose={() => setOpen(false)} /> : null}
    </>
  )
}

const save = (file: Blob, name: string): void => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(file)
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
}

type CsvImportProps = Pick<CsvExchangeProps, 'source' | 'onApplied'> & { onClose: () => void }

function CsvImport({ source, onApplied, onClose }: CsvImportProps) {
  const id = useId()
  const [file, setFile] = useState<Blob | null>(null)
  const [key, setKey] = useState('')
  const shown = useMutation({
    mutationFn: (given: { whole: Blob; key: string }) => source.preview(given.whole, given.key),
  })
  const applied = useMutation({
    mutationFn: ({ whole, preview }: { whole: Blob; preview: CsvShown }) =>
      source.apply(whole, { digest: preview.digest, refused: 'leave-out' }, key),
    onSuccess: onApplied,
  })
  const choose = (chosen: Blob | undefined) => {
    if (chosen === undefined) return
    const next = crypto.randomUUID()
    setFile(chosen)
    setKey(next)
    applied.reset()
    shown.mutate({ whole: chosen, key: next })
  }
  const preview = shown.data
  const rows = preview === undefined ? 0 : preview.counts.added + preview.counts.changed
  return (
    <Dialog title="Read a CSV file" onClose={onClose}>
      <div className="stack">
        <label htmlFor={id}>The file. Nothing changes before you have seen what it would do.</label>
        <input
          id={id}
          type="file"
          accept=".csv,text/csv"
          onChange={(event) => choose(event.target.files?.[0])}
        />
        {shown.isError ? <ProblemNotice problem={problemText(shown.error)} /> : null}
        <StatusLine>
          {applied.data !== undefined
            ? `Done. ${csvCounts(applied.data)}`
            : preview === undefined
              ? null
              : csvCounts(preview.counts)}
        </StatusLine>
        {shown.isPending ? (
          <ImportWork
            key="reading"
            source={source}
            watch={key}
            words="Reading the file and comparing it with what is stored"
          />
        ) : applied.isPending ? (
          <ImportWork
            key="writing"
            source={source}
            watch={key}
            words={`Writing ${rows} ${rows === 1 ? 'row' : 'rows'}, all of them or none`}
          />
        ) : null}
        {preview === undefined || applied.isSuccess ? null : <Shown preview={preview} />}
        {applied.isError ? <ProblemNotice problem={problemText(applied.error)} /> : null}
        {preview === undefined || file === null || applied.isSuccess ? null : (
          <Button
            look="main"
            busy={applied.isPending}
            whyNot={rows === 0 ? 'Nothing in this file is new or changed.' : undefined}
            onClick={() => applied.mutate({ whole: file, preview })}
          >
            {preview.counts.refused === 0
              ? `Take ${rows} ${rows === 1 ? 'row' : 'rows'}`
              : `Take ${rows} ${rows === 1 ? 'row' : 'rows'}, leave the refused ones out`}
          </Button>
        )}
      </div>
    </Dialog>
  )
}

/** How often it is asked how far an import has come. */
const askEveryMs = 500

type ImportWorkProps = Pick<CsvExchangeProps, 'source'> & { watch: string; words: string }

/** An import under way, with its rows done of all. Where nobody can say, the seconds still count. */
function ImportWork({ source, watch, words }: ImportWorkProps) {
  const asked = useQuery({
    queryKey: ['import-progress', watch, words],
    queryFn: () => source.progress(watch),
    refetchInterval: askEveryMs,
    retry: false,
    gcTime: 0,
  })
  const progress = asked.data ?? null
  return (
    <LongWork
      words={words}
      counted={progress === null ? null : { ...progress, words: csvProgress(progress) }}
    />
  )
}

/** So many rows of each sort are read here; the counts are of all. */
const mostShown = 100

function Shown({ preview }: { preview: CsvShown }) {
  return (
    <>
      {preview.refused.length === 0 ? null : (
        <table className="record-table">
          <caption>Refused</caption>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">Column</th>
              <th scope="col">Found</th>
              <th scope="col">Why, and what to do</th>
            </tr>
          </thead>
          <tbody>
            {preview.refused.slice(0, mostShown).flatMap(({ row, faults }) =>
              faults.map((fault) => (
                <tr key={`${row} ${fault.column ?? ''}`}>
                  <th scope="row">{row}</th>
                  <td>{fault.column}</td>
                  <td>{fault.found}</td>
                  <td>
                    {fault.reason} {fault.do}
                  </td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      )}
      {preview.changed.length === 0 ? null : (
        <table className="record-table">
          <caption>Changed</caption>
          <thead>
            <tr>
              <th scope="col">Row</th>
              <th scope="col">Name</th>
              <th scope="col">Column: before → after</th>
            </tr>
          </thead>
          <tbody>
            {preview.changed.slice(0, mostShown).map(({ row, name, fields }) => (
              <tr key={row}>
                <th scope="row">{row}</th>
                <td>{name}</td>
                <td>
                  {fields
                    .map(
                      ({ column, before, after }) => `${column}: ${before || 'empty'} → ${after || 'empty'}`,
                    )
                    .join('; ')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {preview.added.length === 0 ? null : (
        <p>
          Added:{' '}
          {preview.added
            .slice(0, mostShown)
            .map(({ name }) => name)
            .join('; ')}
          {preview.counts.added > mostShown ? ` and ${preview.counts.added - mostShown} more` : ''}.
        </p>
      )}
    </>
  )
}
