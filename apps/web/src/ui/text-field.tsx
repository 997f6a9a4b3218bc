import { type ComponentProps, useId } from 'react'
import { FieldFrame, type FieldWords, noteAttributes } from './field-parts.tsx'

type TextFieldProps = FieldWords &
  Omit<ComponentProps<'input'>, 'onChange' | 'value'> & {
    value: string
    onChange: (text: string) => void
    /** A plate, VIN, sensor ID: shown in the typeface that distinguishes O from 0. */
    exact?: boolean
  }

export function TextField({ label, hint, fault, value, onChange, exact = false, ...rest }: TextFieldProps) {
  const id = useId()
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <input
        {...(exact
          ? { autoCapitalize: 'characters', autoCorrect: 'off', spellCheck: false, autoComplete: 'off' }
          : {})}
        {...rest}
        {...noteAttributes(id, { hint, fault })}
        id={id}
        className={`entry${exact ? ' exact' : ''}`}
        value={value}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </FieldFrame>
  )
}

type TextAreaProps = FieldWords &
  Omit<ComponentProps<'textarea'>, 'onChange' | 'value'> & { value: string; onChange: (text: string) => void }

export function TextArea({ label, hint, fault, value, onChange, ...rest }: TextAreaProps) {
  const id = useId()
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <textarea
        rows={2}
        {...rest}
        {...noteAttributes(id, { hint, fault })}
        id={id}
        className="entry"
        value={value}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </FieldFrame>
  )
}
