import { useId } from 'react'
import { CheckGroup, ChoiceGroup } from '../choice-group.tsx'
import { FieldFrame, type FieldWords, noteAttributes } from '../field-parts.tsx'
import { LongSelectField } from '../long-select-field.tsx'
import { SelectField } from '../select-field.tsx'
import { TextArea, TextField } from '../text-field.tsx'
import type { RecordRow } from './record-rows.ts'

type RowFieldProps = {
  row: RecordRow
  value: string
  fault?: string | undefined
  onChange: (value: string) => void
}

/** More options than this make a list to choose from instead of buttons. */
const mostButtons = 5

/** More than these have a search. */
const mostWithoutSearch = 40

/** One row with the control that its kind takes. What was typed is kept as it was typed. */
export function RowField({ row, value, fault, onChange }: RowFieldProps) {
  const hint = hintOf(row)
  const words = { label: row.label, hint, fault }
  switch (row.kind) {
    case 'text':
      return row.lines === undefined ? (
        <TextField {...words} exact={row.exact ?? false} value={value} onChange={onChange} />
      ) : (
        <TextArea {...words} rows={row.lines} value={value} onChange={onChange} />
      )
    case 'number':
      return <PlainField {...words} unit={row.unit} inputMode="decimal" value={value} onChange={onChange} />
    case 'day':
      return <PlainField {...words} type="date" value={value} onChange={onChange} />
    case 'several':
      return (
        <CheckGroup
          {...words}
          options={row.options}
          values={value.split(',')}
          onChange={(values) => onChange(values.join(','))}
        />
      )
    case 'choice': {
      const options =
        row.optional === undefined ? row.options : [{ value: '', label: row.optional }, ...row.options]
      const chosen = options.some((option) => option.value === value) ? value : null
      if (options.length > mostWithoutSearch)
        return <LongSelectField {...words} options={options} value={chosen} onChange={onChange} />
      return options.length > mostButtons ? (
        <SelectField {...words} options={options} value={chosen} onChange={onChange} />
      ) : (
        <ChoiceGroup {...words} options={options} value={chosen} onChange={onChange} />
      )
    }
  }
}

/** What a row says below itself, and that it may stay empty where that is so. A choice offers that among its options. */
const hintOf = (row: RecordRow): string | undefined => {
  const hint = 'hint' in row ? row.hint : undefined
  if (row.optional === undefined || row.kind === 'choice' || row.kind === 'several') return hint
  return [hint, `Empty: ${row.optional}.`].filter((part) => part !== undefined).join(' ')
}

type PlainFieldProps = FieldWords & {
  unit?: string
  type?: 'text' | 'date'
  inputMode?: 'decimal'
  value: string
  onChange: (value: string) => void
}

/** A figure with its unit, or a day. */
function PlainField({
  label,
  hint,
  fault,
  unit,
  type = 'text',
  inputMode,
  value,
  onChange,
}: PlainFieldProps) {
  const id = useId()
  return (
    <FieldFrame id={id} label={label} hint={hint} fault={fault}>
      <span className="entry-with-unit">
        <input
          {...noteAttributes(id, { hint, fault })}
          id={id}
          className={type === 'date' ? 'entry record-day' : 'entry'}
          type={type}
          inputMode={inputMode}
          autoComplete="off"
          value={value}
          onChange={(event) => onChange(event.currentTarget.value)}
        />
        {unit === undefined ? null : <span>{unit}</span>}
      </span>
    </FieldFrame>
  )
}
