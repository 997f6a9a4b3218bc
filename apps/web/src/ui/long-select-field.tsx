import { useId, useState } from 'react'
import { FieldFrame, type FieldWords, noteAttributes } from './field-parts.tsx'
import { type LongOption, optionsFor } from './long-options.ts'
import { StatusLine } from './sentence.tsx'
import { TextField } from './text-field.tsx'

type LongSelectFieldProps = FieldWords & {
  options: readonly LongOption[]
  /** `null`: nothing chosen yet. */
  value: string | null
  onChange: (value: string) => void
}

/**
 * One of hundreds: a list under its headings, and a search that shortens it. Enter in the search takes the first that is left; what
 * is chosen stays in the list whatever is searched for.
 */
export function LongSelectField({ label, hint, fault, options, value, onChange }: LongSelectFieldProps) {
  const id = useId()
  const [searched, setSearched] = useState('')
  const found = optionsFor(searched, options)
  const shown = options.filter((option) => option.value === value || found.includes(option))
  return (
    <div className="long-select">
      <FieldFrame id={id} label={label} hint={hint} fault={fault}>
        <select
          {...noteAttributes(id, { hint, fault })}
          id={id}
          className="entry"
          value={value ?? ''}
          onChange={(event) => event.currentTarget.value !== '' && onChange(event.currentTarget.value)}
        >
          {value === null ? <option value="">Choose</option> : null}
          {groupsOf(shown).map(([group, members]) => (
            <optgroup key={group} label={group}>
              {members.map((option) => (
                <option key={option.value} value={option.value}>
                  {option.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </FieldFrame>
      <TextField
        label={`Search: ${label}`}
        type="search"
        autoComplete="off"
        value={searched}
        onChange={setSearched}
        onKeyDown={(event) => {
          if (event.key !== 'Enter' || searched.trim() === '') return
          event.preventDefault()
          const [first] = found
          if (first === undefined) return
          onChange(first.value)
          setSearched('')
        }}
      />
      <StatusLine>{searchWords(searched, found)}</StatusLine>
    </div>
  )
}

const groupsOf = (options: readonly LongOption[]): [string, LongOption[]][] => [
  ...Map.groupBy(options, ({ group }) => group ?? '').entries(),
]

const searchWords = (searched: string, found: readonly LongOption[]): string | null => {
  if (searched.trim() === '') return null
  const [first] = found
  if (first === undefined) return 'None is called so. Try another word, or less of it.'
  return found.length === 1
    ? `Enter takes ${first.label}.`
    : `${found.length} are left in the list. Enter takes ${first.label}.`
}
