import { useId, useState } from 'react'
import { FieldFrame, type FieldWords, noteAttributes } from './field-parts.tsx'
import { numberFrom } from './number-text.ts'

type NumberFieldProps = FieldWords & {
  unit: string
  /** `null`: nothing typed, or nothing that is a number. */
  value: number | null
  onChange: (value: number | null) => void
}

/** A typed figure with its unit. What was typed is never rounded or moved into a range behind the person's back. */
export function NumberField({ label, hint, fault, unit, value, onChange }: NumberFieldProps) {
  const id = useId()
  const [text, setText] = useState(value === null ? '' : String(value))
  const shown = numberFrom(text) === value ? text : value === null ? '' : String(value)
  const notNumber = text.trim() !== '' && numberFrom(text) === null
  const words = notNumber
    ? `"${text}" is no figure. Type up to nine digits, with a point before decimals.`
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
            onChange(numberFrom(event.currentTarget.value))
          }}
        />
        <span>{unit}</span>
      </span>
    </FieldFrame>
  )
}
