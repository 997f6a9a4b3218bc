import { type Customer, type CustomerContent, putCustomer } from '@bayledger/contract/customers'
import { putVehicle, type Vehicle, type VehicleContent } from '@bayledger/contract/vehicles'
import { languageNames } from '@bayledger/wording/language-names'
import { useMutation, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { orderKey } from '../../../features/ledger/order-query.ts'
import { call } from '../../../lib/api-client.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { typedOrNull } from '../../../lib/typed-text.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Line, Lines } from '../../../ui/section.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { AlikeVehicles } from '../alike-vehicles.tsx'
import { LanguageChoice } from '../language-choice.tsx'

type EditProps = { orderId: string; onClose: () => void }

/** Saves under the version that was read; if someone saved in the meantime, shows their values beside these. */
const useSave = <Content,>(
  orderId: string,
  onClose: () => void,
  save: (content: Content, version: number) => Promise<unknown>,
) => {
  const client = useQueryClient()
  return useMutation({
    mutationFn: ({ content, version }: { content: Content; version: number }) => save(content, version),
    onSuccess: async () => {
      await client.invalidateQueries({ queryKey: orderKey(orderId) })
      await client.invalidateQueries({ queryKey: ['floor'] })
      onClose()
    },
  })
}

const contacts = [
  { value: 'mayCall', label: 'may be called' },
  { value: 'mayText', label: 'may be texted' },
  { value: 'mayEmail', label: 'may be e-mailed' },
] as const

export function EditCustomer({ orderId, customer, onClose }: EditProps & { customer: Customer }) {
  const [base, setBase] = useState(customer)
  const [typed, setTyped] = useState({
    name: customer.name,
    phone: customer.phone ?? '',
    email: customer.email ?? '',
  })
  const [language, setLanguage] = useState(customer.language)
  const [allowed, setAllowed] = useState(
    contacts.map(({ value }) => value).filter((value) => customer[value]),
  )
  const save = useSave<CustomerContent>(orderId, onClose, (body, version) =>
    call(putCustomer, { params: { customerId: customer.customerId }, body, version }),
  )
  const content: CustomerContent = {
    name: typed.name,
    phone: typedOrNull(typed.phone),
    email: typedOrNull(typed.email),
    mayCall: allowed.includes('mayCall'),
    mayText: allowed.includes('mayText'),
    mayEmail: allowed.includes('mayEmail'),
    language,
  }
  const stored = staleVersion<Customer>(save.error)
  return (
    <Dialog title="Customer" onClose={onClose}>
      <div className="stack">
        <TextField label="Name" value={typed.name} onChange={(name) => setTyped({ ...typed, name })} />
        <TextField
          label="Telephone"
          type="tel"
          value={typed.phone}
          onChange={(phone) => setTyped({ ...typed, phone })}
        />
        <TextField
          label="E-mail"
          type="email"
          value={typed.email}
          onChange={(email) => setTyped({ ...typed, email })}
        />
        <LanguageChoice label="Page, estimate and report in" value={language} onChange={setLanguage} />
        <CheckGroup label="About this service" options={contacts} values={allowed} onChange={setAllowed} />
        <SaveFoot
          save={{ isPending: save.isPending, error: save.error }}
          stored={
            stored === null
              ? null
              : [
                  stored.name,
                  stored.phone ?? 'no telephone',
                  stored.email ?? 'no e-mail',
                  languageNames[stored.language],
                ]
          }
          onTop={() => stored !== null && setBase(stored)}
          onSave={() => save.mutate({ content, version: base.version })}
        />
      </div>
    </Dialog>
  )
}

export function EditVehicle({ orderId, vehicle, onClose }: EditProps & { vehicle: Vehicle }) {
  const [base, setBase] = useState(vehicle)
  const [typed, setTyped] = useState({
    plate: vehicle.plate ?? '',
    vin: vehicle.vin ?? '',
    description: vehicle.description,
    color: vehicle.color ?? '',
  })
  const save = useSave<VehicleContent>(orderId, onClose, (body, version) =>
    call(putVehicle, { params: { vehicleId: vehicle.vehicleId }, body, version }),
  )
  const content: VehicleContent = {
    customerId: vehicle.customerId,
    plate: typedOrNull(typed.plate),
    plateRegion: vehicle.plateRegion,
    vin: typedOrNull(typed.vin),
    description: typed.description,
    color: typedOrNull(typed.color),
    notes: vehicle.notes,
    sheetId: vehicle.sheetId,
  }
  const stored = staleVersion<Vehicle>(save.error)
  return (
    <Dialog title="Vehicle" onClose={onClose}>
      <div className="stack">
        <TextField
          label="Plate"
          exact
          value={typed.plate}
          onChange={(plate) => setTyped({ ...typed, plate })}
        />
        <TextField label="VIN" exact value={typed.vin} onChange={(vin) => setTyped({ ...typed, vin })} />
        <AlikeVehicles plate={typed.plate} vin={typed.vin} except={vehicle.vehicleId} />
        <TextField
          label="Make, model and year"
          value={typed.description}
          onChange={(description) => setTyped({ ...typed, description })}
        />
        <TextField label="Color" value={typed.color} onChange={(color) => setTyped({ ...typed, color })} />
        <SaveFoot
          save={{ isPending: save.isPending, error: save.error }}
          stored={
            stored === null
              ? null
              : [
                  stored.plate ?? 'no plate',
                  stored.vin ?? 'no VIN',
                  stored.description,
                  stored.color ?? 'no color',
                ]
          }
          onTop={() => stored !== null && setBase(stored)}
          onSave={() => save.mutate({ content, version: base.version })}
        />
      </div>
    </Dialog>
  )
}

type SaveFootProps = {
  save: { isPending: boolean; error: unknown }
  stored: readonly string[] | null
  onTop: () => void
  onSave: () => void
}

/** Why saving failed and, if someone else saved first, the current values; then the button. */
function SaveFoot({ save, stored, onTop, onSave }: SaveFootProps) {
  return (
    <>
      {save.error === null ? null : <ProblemNotice problem={problemText(save.error)} />}
      {stored === null ? null : (
        <>
          <Lines>
            <Line name="Saved meanwhile">{stored.join(' · ')}</Line>
          </Lines>
          <Button onClick={onTop}>Mine goes on top of it</Button>
        </>
      )}
      <Button look="main" busy={save.isPending} onClick={onSave}>
        Save
      </Button>
    </>
  )
}

/** The values that someone else saved in the meantime, read from the stale-version problem. */
const staleVersion = <Stored,>(thrown: unknown): Stored | null =>
  isCallProblem(thrown, 'VERSION_STALE') ? ((thrown.body.current as Stored | undefined) ?? null) : null
