import { type Customer, listCustomers } from '@bayledger/contract/customers'
import { listVehicles, type Vehicle } from '@bayledger/contract/vehicles'
import { languageNames } from '@bayledger/wording/language-names'
import { telephoneWords, tidyTelephone } from '@bayledger/wording/telephone'
import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { useId, useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { AlikeVehicles } from '../alike-vehicles.tsx'
import { LanguageChoice } from '../language-choice.tsx'
import { KnownChoices } from './known-choices.tsx'
import { SheetChoice } from './sheet-choice.tsx'
import { VinField } from './vin-field.tsx'
import { blankWriteUp, type Person, type Which } from './write-up-form.ts'
import './write-up.css'

type WhoProps = { person: Person; onChange: (person: Person) => void }

/**
 * A known customer is picked from what matches the typed name or number; else the typed one is new. Picking takes the
 * pressed button away: the keyboard goes on from the one in its place.
 */
export function WhoFields({ person, onChange }: WhoProps) {
  const wanted = person.known === null ? person.name.trim() : ''
  const found = useQuery({
    queryKey: ['customers', wanted],
    queryFn: ({ signal }) => call(listCustomers, { query: { q: wanted }, signal }),
    enabled: wanted.length >= 2,
    placeholderData: keepPreviousData,
  })
  const digits = person.known === null ? person.phone.replace(/\D/g, '') : ''
  const byPhone = useQuery({
    queryKey: ['customers', digits],
    queryFn: ({ signal }) => call(listCustomers, { query: { q: digits }, signal }),
    enabled: digits.length >= 7,
    placeholderData: keepPreviousData,
  })
  if (person.known !== null)
    return (
      <div className="stack">
        <div className="row">
          <p>
            <strong>{person.known.name}</strong>{' '}
            {person.known.phone ? telephoneWords(person.known.phone) : ''}
            {person.known.language === 'en' ? '' : ` · ${languageNames[person.known.language]}`}
            {person.known.email ? ` · ${person.known.email}` : ''}
          </p>
          <Button autoFocus onClick={() => onChange(blankWriteUp.person)}>
            Another customer
          </Button>
        </div>
        <KnownChoices customerId={person.known.customerId} />
      </div>
    )
  return (
    <>
      <div className="fields">
        <TextField
          label="Customer’s name"
          autoFocus
          value={person.name}
          onChange={(name) => onChange({ ...person, name })}
        />
        <TextField
          label="Telephone"
          type="tel"
          value={person.phone}
          onChange={(phone) => onChange({ ...person, phone })}
          onBlur={() => onChange({ ...person, phone: tidyTelephone(person.phone) })}
        />
        <TextField
          label="E-mail"
          type="email"
          value={person.email}
          onChange={(email) => onChange({ ...person, email })}
        />
        <CheckGroup
          label="About this service"
          options={ways}
          values={person.may}
          onChange={(may) => onChange({ ...person, may })}
        />
        {person.may.length === 0 ? null : (
          <CheckGroup
            label="The same way also about"
            options={purposes}
            values={person.also}
            onChange={(also) => onChange({ ...person, also })}
          />
        )}
        <LanguageChoice
          label="Page, estimate and report in"
          value={person.language}
          onChange={(language) => onChange({ ...person, language })}
        />
      </div>
      <Matches
        label="Customers on file"
        customers={wanted.length >= 2 ? (found.data?.customers ?? []) : []}
        onPick={(known) => onChange({ ...person, known })}
      />
      <Matches
        label="This telephone number is on file"
        customers={digits.length >= 7 ? (byPhone.data?.customers ?? []) : []}
        onPick={(known) => onChange({ ...person, known })}
      />
    </>
  )
}

const ways = [
  { value: 'mayCall', label: 'may be called' },
  { value: 'mayText', label: 'may be texted' },
  { value: 'mayEmail', label: 'may be e-mailed' },
] as const

const purposes = [
  { value: 'retorque', label: 'the torque check' },
  { value: 'deferred', label: 'work put off' },
  { value: 'recall', label: 'a recalled part of ours' },
] as const

function Matches({
  label,
  customers,
  onPick,
}: {
  label: string
  customers: readonly Customer[]
  onPick: (customer: Customer) => void
}) {
  const id = useId()
  if (customers.length === 0) return null
  return (
    <div className="on-file">
      <p id={id}>
        <strong>{label}</strong>
      </p>
      <ul className="matches" aria-labelledby={id}>
        {customers.slice(0, 5).map((customer) => (
          <li key={customer.customerId}>
            <Button onClick={() => onPick(customer)}>
              {customer.name}
              {customer.phone ? ` · ${telephoneWords(customer.phone)}` : ''} · on file
            </Button>
          </li>
        ))}
      </ul>
    </div>
  )
}

type WhichProps = {
  customerId: string | null
  which: Which
  onChange: (which: Which) => void
  /** A vehicle on file was named by its plate or VIN. */
  onUse: (vehicle: Vehicle, owner: Customer) => void
}

/** One of the customer's vehicles, or a new one with its sheet. */
export function WhichFields({ customerId, which, onChange, onUse }: WhichProps) {
  const vehicles = useQuery({
    queryKey: ['vehicles', customerId],
    queryFn: ({ signal }) => call(listVehicles, { query: { customerId: customerId ?? '' }, signal }),
    enabled: customerId !== null,
  })
  /** The vehicle on file was put away: the keyboard goes on from the first field in its place. */
  const [hasLeft, setLeft] = useState(false)
  const known = vehicles.data?.vehicles ?? []
  const pick = (vehicle: Vehicle) =>
    onChange({ ...which, known: vehicle, sheetId: vehicle.sheetId ?? which.sheetId })
  return (
    <div className="stack">
      {known.length === 0 || which.known !== null ? null : (
        <ul className="matches" aria-label="Vehicles on file">
          {known.map((vehicle) => (
            <li key={vehicle.vehicleId}>
              <Button onClick={() => pick(vehicle)}>
                {vehicle.plate ?? 'no plate'} · {vehicle.description}
                {vehicle.color === null ? '' : `, ${vehicle.color}`} · on file
              </Button>
            </li>
          ))}
        </ul>
      )}
      {which.known !== null ? (
        <div className="row">
          <p>
            <span className="exact">{which.known.plate ?? 'no plate'}</span> ·{' '}
            <strong>{which.known.description}</strong>
            {which.known.color === null ? '' : `, ${which.known.color}`}
            {which.known.customerId === customerId
              ? ''
              : ' · It is another customer’s on file, and becomes this one’s when the order is opened.'}
          </p>
          <Button
            autoFocus
            onClick={() => {
              setLeft(true)
              // Another vehicle has figures of its own: the sheet of this one would be wrong for it.
              onChange({ ...which, known: null, sheetId: null })
            }}
          >
            Another vehicle
          </Button>
        </div>
      ) : (
        <>
          <div className="fields">
            <TextField
              label="Plate"
              exact
              autoFocus={hasLeft}
              value={which.plate}
              onChange={(plate) => onChange({ ...which, plate })}
            />
            <VinField vin={which.vin} onChange={(vin) => onChange({ ...which, vin })} />
            <TextField
              label="Make, model and year"
              value={which.description}
              onChange={(description) => onChange({ ...which, description })}
            />
            <TextField
              label="Color"
              value={which.color}
              onChange={(color) => onChange({ ...which, color })}
            />
          </div>
          <AlikeVehicles plate={which.plate} vin={which.vin} onUse={onUse} />
        </>
      )}
      <SheetChoice which={which} onChange={onChange} />
    </div>
  )
}
