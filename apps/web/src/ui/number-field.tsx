import { useId, useState } from 'react'
import { FieldFrame, type FieldWords, noteAttributes } from './field-parts.tsx'
import { type TypedFigure, typedFigure } from './number-text.ts'

type NumberFieldProps = FieldWords & {
  unit: string
  value: TypedFigure
  onChange: (value: TypedFigure) => void
}

/** A typed figure with its unit. What was typed is never rounded or moved into a range behind the person's back. */
export function NumberField({ label, hint, fault, unit, value, onChange }: NumberFieldProps) {
  const id = useId()
  const given = typeof value === 'number' ? String(value) : ''
  const [text, setText] = useState(given)
  const shown = typedFigure(text) === value ? text : given
  const words =
    value === 'unreadable'
      ? `"${text}" is no figure. Type up to nine digits without commas, with a point before decimals.`
      : fault
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={words}>
      <span className="entry-with-unit">
        <input
          {...noteAttributes(id, { hint, fault: words })}
          id={id}
          className="entry"
          inputMode="decimal"
          autoComplete="off"
          value={shown}
          onChange={(event) => {
            setText(event.currentTarget.value)
            onChange(typedFigure(event.currentTarget.value))
          }}
        />
        <span>{unit}</span>
      </span>
    </FieldFrame>
  )
}
