import { type KeyboardEvent, useId } from 'react'
import { FieldNotes, type FieldWords, noteIds } from './field-parts.tsx'
import type { Option } from './select-field.tsx'
import './choice-group.css'

type ChoiceGroupProps<Value extends string> = FieldWords & {
  /** What is asked about, where the page shows it above: a screen reader says it before the label. */
  about?: string
  options: readonly Option<Value>[]
  /** `null`: nothing chosen yet; nothing is chosen for anyone beforehand. */
  value: Value | null
  onChange: (value: Value) => void
  /** `row`: side by side as far as they fit; `column`: one below the other. */
  flow?: 'row' | 'column'
}

/** One of a few options, each a target as large as the face needs; arrow keys move between them. */
export function ChoiceGroup<Value extends string>({
  about,
  label,
  hint,
  fault,
  options,
  value,
  onChange,
  flow = 'row',
}: ChoiceGroupProps<Value>) {
  const id = useId()
  return (
    <fieldset className="field" aria-describedby={noteIds(id, { hint, fault })}>
      <legend className="field-legend">
        {about === undefined ? null : <span className="for-screen-readers">{about}: </span>}
        {label}
      </legend>
      <div className={`choices choices-${flow}`}>
        {options.map((option) => (
          <label key={option.value} className="choice">
            <input
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
              onKeyDown={pressOnEnter}
            />
            <ChoiceWords option={option} />
          </label>
        ))}
      </div>
      <FieldNotes id={id} hint={hint} fault={fault} />
    </fieldset>
  )
}

type CheckGroupProps<Value extends string> = FieldWords & {
  options: readonly Option<Value>[]
  values: readonly Value[]
  onChange: (values: Value[]) => void
  flow?: 'row' | 'column'
}

/** Any number of a few; the chosen come back in the order of the options. */
export function CheckGroup<Value extends string>({
  label,
  hint,
  fault,
  options,
  values,
  onChange,
  flow = 'row',
}: CheckGroupProps<Value>) {
  const id = useId()
  const toggle = (value: Value) =>
    onChange(
      options
        .map((option) => option.value)
        .filter((one) => (one === value ? !values.includes(one) : values.includes(one))),
    )
  return (
    <fieldset className="field" aria-describedby={noteIds(id, { hint, fault })}>
      <legend className="field-legend">{label}</legend>
      <div className={`choices choices-${flow}`}>
        {options.map((option) => (
          <label key={option.value} className="choice">
            <input
              type="checkbox"
              checked={values.includes(option.value)}
              onChange={() => toggle(option.value)}
              onKeyDown={pressOnEnter}
            />
            <ChoiceWords option={option} />
          </label>
        ))}
      </div>
      <FieldNotes id={id} hint={hint} fault={fault} />
    </fieldset>
  )
}

/** Enter chooses, as Space does; by default it would submit the surrounding form. */
const pressOnEnter = (event: KeyboardEvent<HTMLInputElement>) => {
  if (event.key !== 'Enter') return
  event.preventDefault()
  event.currentTarget.click()
}

function ChoiceWords<Value extends string>({ option }: { option: Option<Value> }) {
  return (
    <span className="choice-words">
      {option.label}
      {option.detail === undefined ? null : <span className="choice-detail">{option.detail}</span>}
    </span>
  )
}
