import { getCustomer } from '@bayledger/contract/customers'
import { getVehicle } from '@bayledger/contract/vehicles'
import { extendedCents } from '@bayledger/reckoning/money/cents'
import { readingOrder, wheelNames } from '@bayledger/reckoning/wheels'
import { capitalized } from '@bayledger/wording/capitalized'
import { lights } from '@bayledger/wording/en/lights'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { type Dispatch, type SetStateAction, useEffect, useState } from 'react'
import { useNavigate, useSearchParams } from 'react-router'
import { priceListIn, settingsQuery, sheetsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { money } from '../../../lib/format.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { CheckGroup, ChoiceGroup } from '../../../ui/choice-group.tsx'
import { NumberField } from '../../../ui/number-field.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { SelectField } from '../../../ui/select-field.tsx'
import { TextArea, TextField } from '../../../ui/text-field.tsx'
import { rememberedPlace, rememberPlace } from '../write-up/desk-place.ts'
import { askedEvents } from '../write-up/events.ts'
import { WhichFields, WhoFields } from '../write-up/who-and-which.tsx'
import {
  blankWriteUp,
  missingInWriteUp,
  newWriteUpKeys,
  openOrder,
  type WriteUp,
} from '../write-up/write-up-form.ts'
import '../write-up/write-up.css'

const behaviors = (
  ['flash-then-solid', 'solid', 'intermittent-cold', 'intermittent-other', 'flash-continuous', 'off'] as const
).map((value) => ({ value, label: capitalized(lights.does[value]) }))
const reportedLights = [...behaviors, { value: 'not-known', label: 'Does not know' } as const]

/** Can be filled from top to bottom with Tab and Enter only. */
export function WriteUpRoute() {
  const [form, setForm] = useState<WriteUp>(blankWriteUp)
  const [keys] = useState(newWriteUpKeys)
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)
  const settings = useQuery(settingsQuery)
  const sheets = useQuery(sheetsQuery)
  const client = useQueryClient()
  const navigate = useNavigate()
  const set = (change: Partial<WriteUp>) => setForm((before) => ({ ...before, ...change }))
  useKnownFromAddress(setForm)

  const prices = priceListIn(settings.data?.settings ?? [])
  const lookFeeCents = prices === null ? 0 : extendedCents(prices.hours.look, prices.laborCentsPerHour)
  const sheet = sheets.data?.sheets.find(({ sheetId }) => sheetId === form.which.sheetId)
  const locations = settings.data?.locations ?? []
  const locationId = form.locationId ?? rememberedPlace(locations.map((location) => location.locationId))

  const open = async () => {
    if (sheet === undefined || locationId === null) return
    setBusy(true)
    setProblem(null)
    try {
      const today = new Date().toLocaleDateString('en-CA')
      const orderId = await openOrder(form, keys, {
        locationId,
        sheet,
        lookFeeCents,
        today,
      })
      rememberPlace(locationId)
      await client.invalidateQueries({ queryKey: ['floor'] })
      navigate(deskOrderPath(orderId))
    } catch (thrown) {
      // After a refusal the corrected form gets new ids; a request without an answer is sent again unchanged.
      if (isCallProblem(thrown, 'ENTRY_REFUSED')) keys.entries = null
      setProblem(thrown)
    } finally {
      setBusy(false)
    }
  }

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault()
        void open()
      }}
    >
      <title>Write-up · Bayledger desk</title>
      <h1>Write up a complaint</h1>
      <Section title="Who">
        <WhoFields person={form.person} onChange={(person) => set({ person })} />
      </Section>
      <Section title="Which vehicle">
        <WhichFields
          customerId={form.person.known?.customerId ?? null}
          which={form.which}
          onChange={(which) => set({ which })}
        />
      </Section>
      <Section title="Complaint">
        <div className="stack">
          <TextArea
            label="The complaint, in the customer’s own words"
            value={form.words}
            onChange={(words) => set({ words })}
          />
          <ChoiceGroup
            label="What does the warning light do?"
            options={reportedLights}
            value={form.light}
            onChange={(light) => set({ light })}
          />
          <CheckGroup
            label="What happened lately?"
            hint="Ask each by name. A can of sealant can burn when the tire is opened."
            options={askedEvents.map(({ kind, label }) => ({ value: kind, label }))}
            values={form.events}
            onChange={(events) => set({ events })}
          />
          <div className="fields">
            {askedEvents
              .filter(({ kind, atWheel }) => atWheel && form.events.includes(kind))
              .map(({ kind, label }) => (
                <SelectField
                  key={kind}
                  label={`${label}: which wheel?`}
                  unchosen="Not known"
                  options={readingOrder.map((wheel) => ({
                    value: wheel,
                    label: `${wheel}, ${wheelNames[wheel]}`,
                  }))}
                  value={form.eventWheels[kind] ?? null}
                  onChange={(wheel) => set({ eventWheels: { ...form.eventWheels, [kind]: wheel } })}
                />
              ))}
          </div>
          <CheckGroup
            label="Asked"
            options={[
              { value: 'each', label: 'I asked for each of these by name; the others did not happen' },
            ]}
            values={form.askedEach ? ['each'] : []}
            onChange={(values) => set({ askedEach: values.length > 0 })}
          />
        </div>
      </Section>
      <Section title="Agreed">
        <div className="stack">
          <div className="fields">
            <ChoiceGroup
              label="The customer"
              options={[
                { value: 'here', label: 'Waits here' },
                { value: 'leaves', label: 'Leaves the vehicle' },
              ]}
              value={form.waitsHere}
              onChange={(waitsHere) => set({ waitsHere })}
            />
            <TextField
              label="Promised by"
              type="time"
              value={form.promised}
              onChange={(promised) => set({ promised })}
            />
            <NumberField
              label="Odometer"
              unit="mi"
              value={form.odometer}
              onChange={(odometer) => set({ odometer })}
            />
          </div>
          {locations.length < 2 ? null : (
            <ChoiceGroup
              label="At"
              options={locations.map((location) => ({ value: location.locationId, label: location.name }))}
              value={locationId}
              onChange={(chosen) => set({ locationId: chosen })}
            />
          )}
          <ChoiceGroup
            label="Inspection fee"
            options={[
              { value: 'charged', label: money(lookFeeCents), detail: 'charged with or without work' },
              { value: 'waived', label: 'Nothing', detail: 'waived' },
            ]}
            value={form.lookWaived}
            onChange={(lookWaived) => set({ lookWaived })}
          />
          <CheckGroup
            label="The customer agrees to"
            options={[
              { value: 'look', label: 'Inspecting every wheel and the vehicle' },
              { value: 'drive', label: 'A proof drive of up to 30 minutes' },
            ]}
            values={form.consent}
            onChange={(consent) => set({ consent })}
          />
          <ChoiceGroup
            label="Agreed by"
            options={[
              { value: 'owner', label: 'The owner' },
              { value: 'named-person', label: 'A person the owner named' },
              { value: 'fleet-contact', label: 'A fleet contact' },
            ]}
            value={form.consentBy}
            onChange={(consentBy) => set({ consentBy })}
          />
          {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
          <Button
            type="submit"
            look="wide"
            busy={busy}
            whyNot={
              missingInWriteUp(form) ?? (locationId === null ? 'At which place is the vehicle?' : undefined)
            }
          >
            Open the order
          </Button>
        </div>
      </Section>
    </form>
  )
}

/** A write-up begun from the search box knows its customer, and perhaps the vehicle. */
const useKnownFromAddress = (setForm: Dispatch<SetStateAction<WriteUp>>) => {
  const [search] = useSearchParams()
  const customerId = search.get('customer')
  const vehicleId = search.get('vehicle')
  const known = useQuery({
    queryKey: ['write-up', customerId, vehicleId],
    enabled: customerId !== null,
    queryFn: async () => ({
      customer: await call(getCustomer, { params: { customerId: customerId ?? '' } }),
      vehicle: vehicleId === null ? null : await call(getVehicle, { params: { vehicleId } }),
    }),
  })
  // Once, when it arrives: what is typed afterwards stays.
  const arrived = known.data
  useEffect(() => {
    if (arrived === undefined) return
    const { customer, vehicle } = arrived
    setForm((before) => ({
      ...before,
      person: { known: customer, name: customer.name, phone: customer.phone ?? '' },
      which:
        vehicle === null ? before.which : { ...blankWriteUp.which, known: vehicle, sheetId: vehicle.sheetId },
    }))
  }, [arrived, setForm])
}
