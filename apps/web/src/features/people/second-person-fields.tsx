import { definitionOf } from '@bayledger/ledger/registry'
import { type AgreedKind, namedOnly, type SecondPerson } from '@bayledger/ledger/second-person'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { secondPersonFaults } from '../../lib/fault-words.ts'
import { SelectField } from '../../ui/select-field.tsx'
import { TextField } from '../../ui/text-field.tsx'
import { sessionQuery, staffQuery } from './queries.ts'

/** The people who may be the second person for a kind of entry, beside whoever is signed in. */
export const useSecondPeople = (kind: AgreedKind) => {
  const staff = useQuery(staffQuery)
  const session = useQuery(sessionQuery)
  const { agreedBy } = definitionOf(kind)
  return (staff.data?.staff ?? []).filter(
    ({ staffId, roles }) =>
      staffId !== session.data?.staff.staffId && roles.some((role) => agreedBy.includes(role)),
  )
}

export type SecondPersonTyped = {
  readonly staffId: string | null
  readonly pin: string
  readonly change: (staffId: string | null, pin: string) => void
}

/** Who agrees, and their PIN, while a dialog is open. */
export const useSecondPersonTyped = (): SecondPersonTyped => {
  const [{ staffId, pin }, set] = useState<{ staffId: string | null; pin: string }>({
    staffId: null,
    pin: '',
  })
  return { staffId, pin, change: (person, digits) => set({ staffId: person, pin: digits }) }
}

/** The second person as a payload names them before their PIN has proven anything. */
export const namedBy = ({ staffId }: SecondPersonTyped): SecondPerson | null =>
  staffId === null ? null : namedOnly(staffId)

/** What is still missing, in words; undefined: nothing. */
export const secondPersonFault = ({ staffId, pin }: SecondPersonTyped): string | undefined =>
  staffId === null ? secondPersonFaults.nobody : /^\d{6}$/.test(pin) ? undefined : secondPersonFaults.noPin

type SecondPersonFieldsProps = {
  kind: AgreedKind
  label: string
  /** What the field shows while nobody is chosen. */
  unchosen?: string
  typed: SecondPersonTyped
}

/** Choose a person; then that person types their own PIN. */
export function SecondPersonFields({ kind, label, unchosen, typed }: SecondPersonFieldsProps) {
  const people = useSecondPeople(kind)
  return (
    <>
      <SelectField
        label={label}
        {...(unchosen === undefined ? {} : { unchosen })}
        options={people.map(({ staffId, name }) => ({ value: staffId, label: name }))}
        value={typed.staffId}
        onChange={(staffId) => typed.change(staffId, '')}
      />
      {typed.staffId === null ? null : (
        <TextField
          label={`PIN of ${people.find(({ staffId }) => staffId === typed.staffId)?.name ?? 'this person'}`}
          type="password"
          inputMode="numeric"
          autoComplete="off"
          maxLength={6}
          value={typed.pin}
          onChange={(pin) => typed.change(typed.staffId, pin)}
        />
      )}
    </>
  )
}
