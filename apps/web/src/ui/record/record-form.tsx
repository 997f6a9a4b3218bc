import { type ReactNode, useEffect, useRef, useState } from 'react'
import { problemText } from '../../lib/problem.ts'
import { Button } from '../button.tsx'
import { ProblemNotice } from '../problem-notice.tsx'
import { StatusLine } from '../sentence.tsx'
import { ConflictNotice } from './conflict-notice.tsx'
import type { RecordRow } from './record-rows.ts'
import { RowField } from './row-field.tsx'
import type { RecordEdit } from './use-record-edit.ts'
import './record.css'

type RecordFormProps = {
  edit: RecordEdit
  saveWord: string
  /** Said once it is saved. */
  savedWord: string | null
  children?: ReactNode
}

/** The editor of one record, row by row: problems stand at their rows, and the first of them has the focus. */
export function RecordForm({ edit, saveWord, savedWord, children }: RecordFormProps) {
  const form = useRef<HTMLFormElement>(null)
  const [tries, setTries] = useState(0)
  const hasProblem = edit.error !== null
  // After a try, and after its answer, the first row at fault has the focus.
  useEffect(() => {
    if (tries === 0 && !hasProblem) return
    form.current?.querySelector<HTMLElement>('.field:has(.field-fault) :is(input, select, textarea)')?.focus()
  }, [tries, hasProblem])
  return (
    <form
      ref={form}
      className="record-form"
      noValidate
      aria-busy={edit.busy}
      onSubmit={(event) => {
        event.preventDefault()
        setTries(tries + 1)
        if (!edit.busy) edit.save()
      }}
    >
      {edit.rows.map((row) => (
        <div key={row.key} className="record-row">
          {row.part === undefined ? null : <h3>{row.part}</h3>}
          <RowField
            row={row}
            value={edit.values[row.key] ?? ''}
            fault={edit.faultOf(row.key)}
            onChange={(value) => edit.set(row.key, value)}
          />
          <RowPreview row={row} typed={(edit.values[row.key] ?? '').trim()} />
          {edit.isDoubted(row.key) ? (
            <label className="choice record-sure">
              <input
                type="checkbox"
                checked={edit.isSure(row.key)}
                onChange={(event) => edit.setSure(row.key, event.currentTarget.checked)}
              />
              It is right as it is typed: {row.label}
            </label>
          ) : null}
        </div>
      ))}
      {children}
      {edit.error === null ? null : (
        <ProblemNotice problem={{ ...problemText(edit.error), fields: edit.elsewhere }} />
      )}
      {edit.conflict === null ? null : (
        <ConflictNotice
          rows={edit.rows}
          typed={edit.values}
          conflict={edit.conflict}
          busy={edit.busy}
          onTake={edit.set}
          onTop={() => edit.conflict !== null && edit.saveOnTop(edit.conflict.version)}
          onGiveUp={edit.giveUp}
        />
      )}
      <div className="row">
        <Button type="submit" look="main" busy={edit.busy}>
          {saveWord}
        </Button>
        {edit.isChanged && edit.conflict === null ? (
          <Button onClick={edit.giveUp}>Give up what you typed</Button>
        ) : null}
      </div>
      <StatusLine>{savedWord}</StatusLine>
    </form>
  )
}

/** What becomes of a text that was typed, for those rows of which that is known. */
function RowPreview({ row, typed }: { row: RecordRow; typed: string }) {
  if (row.kind !== 'text' || row.preview === undefined) return null
  return (
    <details className="record-preview">
      <summary>How it goes out: {row.label}</summary>
      <p>{row.preview(typed)}</p>
    </details>
  )
}
