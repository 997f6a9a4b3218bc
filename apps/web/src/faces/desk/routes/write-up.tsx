import { type Customer, getCustomer } from '@bayledger/contract/customers'
import { getVehiclePage } from '@bayledger/contract/vehicle-page'
import { getVehicle } from '@bayledger/contract/vehicles'
import { beforeArrival } from '@bayledger/ledger/questions/odometer'
import { extendedCents } from '@bayledger/reckoning/money/cents'
import { dayIn, instantOf } from '@bayledger/reckoning/ready/zoned-time'
import { useQuery, useQueryClient } from '@tanstack/react-query'
import { type Dispatch, type SetStateAction, useEffect, useEffectEvent, useState } from 'react'
import { useNavigate, useSearchParams } from 'react-router'
import { newId } from '../../../features/ledger/draft-entry.ts'
import { pricesToday } from '../../../features/settings/price-book.ts'
import { settingsQuery, sheetsQuery } from '../../../features/settings/queries.ts'
import { call } from '../../../lib/api-client.ts'
import { deskOrderPath } from '../../../lib/paths.ts'
import { isCallProblem, problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { Section } from '../../../ui/section.tsx'
import { StatusLine } from '../../../ui/sentence.tsx'
import { useLastOdometer } from '../odometer.ts'
import { useShopClock } from '../shop-clock.ts'
import { AgreedFields } from '../write-up/agreed-fields.tsx'
import { BegunWriteUps } from '../write-up/begun-write-ups.tsx'
import { ComplaintFields } from '../write-up/complaint-fields.tsx'
import { rememberedPlace, rememberPlace } from '../write-up/desk-place.ts'
import { draftsQuery, formOf, throwAway, useKeptDraft } from '../write-up/keep-draft.ts'
import { VehicleBefore } from '../write-up/vehicle-before.tsx'
import { WhichFields, WhoFields } from '../write-up/who-and-which.tsx'
import {
  blankWriteUp,
  isWorthKeeping,
  missingInWriteUp,
  newWriteUpKeys,
  openOrder,
  type WriteUp,
  withVehicle,
} from '../write-up/write-up-form.ts'
import '../write-up/write-up.css'

/** A write-up of its own, or one that somebody began and that the address names. */
export function WriteUpRoute() {
  const [own] = useState(newId)
  const [address, setAddress] = useSearchParams()
  const named = address.get('draft')
  const drafts = useQuery({ ...draftsQuery, enabled: named !== null && named !== own })
  const draftId = named ?? own
  const draft = drafts.data?.drafts.find((one) => one.draftId === named)
  const goOn = (id: string) => setAddress({ draft: id })
  if (named !== null && named !== own && drafts.isPending)
    return <StatusLine>Reading what was typed.</StatusLine>
  if (named !== null && named !== own && drafts.isError)
    return <ProblemNotice problem={problemText(drafts.error)} onRetry={() => void drafts.refetch()} />
  return (
    <OneWriteUp
      key={draftId}
      draftId={draftId}
      begun={(draft && formOf(draft)) ?? blankWriteUp}
      onTyped={() => named === draftId || setAddress({ draft: draftId }, { replace: true })}
      onGoOn={goOn}
    />
  )
}

type OneWriteUpProps = {
  readonly draftId: string
  readonly begun: WriteUp
  /** Something is worth keeping: the address is to name it. */
  readonly onTyped: () => void
  readonly onGoOn: (draftId: string) => void
}

/** Can be filled from top to bottom with Tab and Enter only. */
function OneWriteUp({ draftId, begun, onTyped, onGoOn }: OneWriteUpProps) {
  const [form, setForm] = useState<WriteUp>(begun)
  const [keys] = useState(() => newWriteUpKeys(draftId))
  const [problem, setProblem] = useState<unknown>(null)
  const [busy, setBusy] = useState(false)
  const [isOpened, setOpened] = useState(false)
  const settings = useQuery(settingsQuery)
  const clock = useShopClock()
  const sheets = useQuery(sheetsQuery)
  const client = useQueryClient()
  const navigate = useNavigate()
  useKeptDraft(draftId, form, isOpened)
  const tellTyped = useEffectEvent(onTyped)
  const isTyped = isWorthKeeping(form)
  useEffect(() => {
    if (isTyped) tellTyped()
  }, [isTyped])
  const set = (change: Partial<WriteUp>) => setForm((before) => ({ ...before, ...change }))
  useKnownFromAddress(setForm)

  const prices = pricesToday(settings.data, new Date())
  const lookFeeCents = prices === null ? 0 : extendedCents(prices.hours.look, prices.laborCentsPerHour)
  const sheet = sheets.data?.sheets.find(({ sheetId }) => sheetId === form.which.sheetId)
  const last = useLastOdometer(form.which.known?.vehicleId ?? null)
  const odometerBefore = beforeArrival(last, new Date().toISOString())
  const locations = settings.data?.locations ?? []
  const locationId = form.locationId ?? rememberedPlace(locations.map((location) => location.locationId))

  const timeZone =
    locations.find((location) => location.locationId === locationId)?.timeZone ?? clock.timeZone
  const today = dayIn(new Date(), timeZone)
  const promisedAt = instantOf(form.promisedOn ?? today, form.promised, timeZone)
  const isPromisePast = promisedAt !== null && Date.parse(promisedAt) < Date.now()

  const open = async () => {
    if ((sheet === undefined && !form.which.isNewKind) || locationId === null) return
    setBusy(true)
    setProblem(null)
    try {
      const orderId = await openOrder(form, keys, {
        locationId,
        sheet: form.which.isNewKind ? null : (sheet ?? null),
        lookFeeCents,
        today,
        timeZone,
      })
      setOpened(true)
      rememberPlace(locationId)
      // It may have been thrown away at another desk, and one that stays can be thrown away by anybody.
      await throwAway(draftId).catch(() => undefined)
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
      <BegunWriteUps except={draftId} onGoOn={onGoOn} />
      <Section title="Who">
        <WhoFields person={form.person} onChange={(person) => set({ person })} />
      </Section>
      <Section title="Which vehicle">
        <WhichFields
          customerId={form.person.known?.customerId ?? null}
          which={form.which}
          onChange={(which) => set(withVehicle(form, which))}
          onUse={(vehicle, owner) =>
            set({
              ...withVehicle(form, {
                ...form.which,
                known: vehicle,
                sheetId: vehicle.sheetId ?? form.which.sheetId,
              }),
              ...(form.person.known === null && form.person.name.trim() === ''
                ? { person: personOf(owner) }
                : {}),
            })
          }
        />
        {form.which.known === null ? null : (
          <VehicleBefore
            vehicle={form.which.known}
            customerId={form.person.known?.customerId ?? null}
            comebackOf={form.comebackOf}
            onComeback={(comebackOf) => set({ comebackOf, lookFee: comebackOf === null ? null : 'waived' })}
          />
        )}
      </Section>
      <ComplaintFields form={form} set={set} />
      <AgreedFields
        form={form}
        set={set}
        locations={locations}
        locationId={locationId}
        timeZone={timeZone}
        lookFeeCents={lookFeeCents}
        odometerBefore={odometerBefore}
      >
        {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
        <Button
          type="submit"
          look="wide"
          busy={busy}
          whyNot={
            missingInWriteUp(form, odometerBefore, isPromisePast) ??
            (locationId === null ? 'At which place is the vehicle?' : undefined)
          }
        >
          Open the order
        </Button>
      </AgreedFields>
    </form>
  )
}

/** The visit after which a vehicle came back; `null` where it is none of this vehicle and owner. */
const visitNamed = async (vehicleId: string, orderId: string): Promise<WriteUp['comebackOf']> => {
  const { visits } = await call(getVehiclePage, { params: { vehicleId } })
  const visit = visits.find((one) => one.orderId === orderId)
  return visit ? { orderId, number: visit.number } : null
}

const personOf = (customer: Customer): WriteUp['person'] => ({
  ...blankWriteUp.person,
  known: customer,
  name: customer.name,
  phone: customer.phone ?? '',
  language: customer.language,
})

/** A write-up begun from the search box knows its customer, and perhaps the vehicle. */
const useKnownFromAddress = (setForm: Dispatch<SetStateAction<WriteUp>>) => {
  const [search] = useSearchParams()
  const customerId = search.get('customer')
  const vehicleId = search.get('vehicle')
  const after = search.get('after')
  const known = useQuery({
    queryKey: ['write-up', customerId, vehicleId, after],
    enabled: customerId !== null,
    queryFn: async () => ({
      customer: await call(getCustomer, { params: { customerId: customerId ?? '' } }),
      vehicle: vehicleId === null ? null : await call(getVehicle, { params: { vehicleId } }),
      comebackOf: vehicleId === null || after === null ? null : await visitNamed(vehicleId, after),
    }),
  })
  // Once, when it arrives: what is typed afterwards stays.
  const arrived = known.data
  useEffect(() => {
    if (arrived === undefined) return
    const { customer, vehicle, comebackOf } = arrived
    setForm((before) => ({
      ...before,
      person: personOf(customer),
      ...(comebackOf === null ? {} : { comebackOf, lookFee: 'waived' as const }),
      which:
        vehicle === null ? before.which : { ...blankWriteUp.which, known: vehicle, sheetId: vehicle.sheetId },
    }))
  }, [arrived, setForm])
}
