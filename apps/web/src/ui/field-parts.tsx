import type { ReactNode } from 'react'
import './field-parts.css'

export type FieldWords = {
  label: string
  /** What is allowed or meant, shown before anyone errs. */
  hint?: string | undefined
  /** What is wrong with the present value and what to do; its presence marks the field as faulty. */
  fault?: string | undefined
}

/** A label over its control, with hint and fault below, all tied together for screen readers by `partIds`. */
export function FieldFrame({
  id,
  label,
  hint,
  fault,
  children,
}: FieldWords & { id: string; children: ReactNode }) {
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {children}
      <FieldNotes id={id} hint={hint} fault={fault} />
    </div>
  )
}

export function FieldNotes({ id, hint, fault }: Pick<FieldWords, 'hint' | 'fault'> & { id: string }) {
  return (
    <>
      {hint === undefined ? null : (
        <p id={`${id}-hint`} className="field-hint">
          {hint}
        </p>
      )}
      {fault === undefined ? null : (
        <p id={`${id}-fault`} className="field-fault">
          {fault}
        </p>
      )}
    </>
  )
}

/** The ids of the notes below a control, for `aria-describedby`. */
export function noteIds(id: string, { hint, fault }: Pick<FieldWords, 'hint' | 'fault'>): string | undefined {
  const notes = [fault === undefined ? '' : `${id}-fault`, hint === undefined ? '' : `${id}-hint`]
  return notes.filter(Boolean).join(' ') || undefined
}

/** The attributes that tie a single control to its notes. */
export function noteAttributes(id: string, words: Pick<FieldWords, 'hint' | 'fault'>) {
  return {
    'aria-describedby': noteIds(id, words),
    'aria-invalid': words.fault === undefined ? undefined : true,
  }
}
