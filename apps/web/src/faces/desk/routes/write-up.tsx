import { getCustomer } from '@bayledger/contract/customers'
import { getVehicle } from '@bayledger/contract/vehicles'
import { beforeArrival } from '@bayledger/ledger/questions/odometer'
import { extendedCents } from '@bayledger/reckoning/money/cents'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { type Dispatch, type SetStateAction, useEffect, useState } from 'react'
import { useNavigate, useSearchParams } from 'react-router'
import { pricesToday } from '../../../features/settings/price-book.ts'
import { settingsQuery, sheetsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { useLastOdometer } from '../odometer.ts'
import { AgreedFields } from '../write-up/agreed-fields.tsx'
import { ComplaintFields } from '../write-up/complaint-fields.tsx'
import { rememberedPlace, rememberPlace } from '../write-up/desk-place.ts'
import { WhichFields, WhoFields } from '../write-up/who-and-which.tsx'
import {
  blankWriteUp,
  missingInWriteUp,
  newWriteUpKeys,
  openOrder,
  type WriteUp,
} from '../write-up/write-up-form.ts'
import '../write-up/write-up.css'

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

  const prices = pricesToday(settings.data, new Date())
  const lookFeeCents = prices === null ? 0 : extendedCents(prices.hours.look, prices.laborCentsPerHour)
  const sheet = sheets.data?.sheets.find(({ sheetId }) => sheetId === form.which.sheetId)
  const last = useLastOdometer(form.which.known?.vehicleId ?? null)
  const odometerBefore = beforeArrival(last, new Date().toISOString())
  const locations = settings.data?.locations ?? []
  const locationId = form.locationId ?? rememberedPlace(locations.map((location) => location.locationId))

  const open = async () => {
    if ((sheet === undefined && !form.which.isNewKind) || locationId === null) return
    setBusy(true)
    setProblem(null)
    try {
      const today = new Date().toLocaleDateString('en-CA')
      const orderId = await openOrder(form, keys, {
        locationId,
        sheet: form.which.isNewKind ? null : (sheet ?? null),
        lookFeeCents,
        today,
      })
      rememberPlace(locationId)
      await client.invalidateQueries({ queryKey: ['floor'] })
      if (form.which.isNewKind) await client.invalidateQueries({ queryKey: ['sheets'] })
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
      <ComplaintFields form={form} set={set} />
      <AgreedFields
        form={form}
        set={set}
        locations={locations}
        locationId={locationId}
        lookFeeCents={lookFeeCents}
        odometerBefore={odometerBefore}
      >
        {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
        <Button
          type="submit"
          look="wide"
          busy={busy}
          whyNot={
            missingInWriteUp(form, odometerBefore) ??
            (locationId === null ? 'At which place is the vehicle?' : undefined)
          }
        >
          Open the order
        </Button>
      </AgreedFields>
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
      person: {
        known: customer,
        name: customer.name,
        phone: customer.phone ?? '',
        language: customer.language,
      },
      which:
        vehicle === null ? before.which : { ...blankWriteUp.which, known: vehicle, sheetId: vehicle.sheetId },
    }))
  }, [arrived, setForm])
}
