import { useQuery } from '@tanstack/react-query'
import { useRef, useState } from 'react'
import { sheetsQuery } from '../../../features/settings/queries.ts'
import { Button } from '../../../ui/button.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { similarSheets } from './similar-sheets.ts'
import type { Which } from './write-up-form.ts'

type SheetChoiceProps = { readonly which: Which; readonly onChange: (which: Which) => void }

/** The specification sheet of a vehicle, or a blank one; a button that goes away leaves the keyboard at what took its place. */
export function SheetChoice({ which, onChange }: SheetChoiceProps) {
  const sheets = useQuery(sheetsQuery).data?.sheets ?? []
  const field = useRef<HTMLDivElement>(null)
  const [isBack, setBack] = useState(false)
  const similar = similarSheets(which.known?.description ?? which.description, sheets)
  if (which.isNewKind)
    return (
      <div className="row">
        <p>
          <strong>A blank sheet is begun for this kind of vehicle.</strong> The bay enters label, torque and
          thread from their sources; a second person confirms them.
        </p>
        <Button
          autoFocus
          onClick={() => {
            setBack(true)
            onChange({ ...which, isNewKind: false })
          }}
        >
          Choose a sheet instead
        </Button>
      </div>
    )
  return (
    <>
      <div ref={field}>
        <SelectField
          label="Specification sheet"
          hint="The shop’s own record of this vehicle type’s figures"
          options={sheets.map(({ sheetId, name }) => ({ value: sheetId, label: name }))}
          autoFocus={isBack}
          value={which.sheetId}
          onChange={(sheetId) => onChange({ ...which, sheetId })}
        />
      </div>
      {which.sheetId === null ? (
        <div className="row">
          {similar.map(({ sheetId, name }) => (
            <Button
              key={sheetId}
              onClick={() => {
                field.current?.querySelector('select')?.focus()
                onChange({ ...which, sheetId })
              }}
            >
              Is it a {name}?
            </Button>
          ))}
          <Button onClick={() => onChange({ ...which, isNewKind: true, sheetId: null })}>
            No sheet of this kind: begin a blank one
          </Button>
        </div>
      ) : null}
    </>
  )
}
