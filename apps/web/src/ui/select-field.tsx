import { type ComponentProps, useId } from 'react'
import { FieldFrame, type FieldWords, noteAttributes } from './field-parts.tsx'

export type Option<Value extends string> = { value: Value; label: string; detail?: string | undefined }

type SelectFieldProps<Value extends string> = FieldWords & {
  options: readonly Option<Value>[]
  /** `null`: nothing chosen yet. */
  value: Value | null
  onChange: (value: Value) => void
  /** Shown while nothing is chosen. */
  unchosen?: string
} & Pick<ComponentProps<'select'>, 'autoFocus'>

/** One of many options, from a closed list too long for buttons. */
export function SelectField<Value extends string>({
  label,
  hint,
  fault,
  options,
  value,
  onChange,
  unchosen = 'Choose',
  ...rest
}: SelectFieldProps<Value>) {
  const id = useId()
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <select
        {...rest}
        {...noteAttributes(id, { hint, fault })}
        id={id}
        className="entry"
        value={value ?? ''}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.currentTarget.value)
          if (chosen !== undefined) onChange(chosen.value)
        }}
      >
        {value === null ? <option value="">{unchosen}</option> : null}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </FieldFrame>
  )
}
