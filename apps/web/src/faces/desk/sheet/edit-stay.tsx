import { arrivalOdometerDoubt, beforeArrival, beforeLeaving } from '@bayledger/ledger/questions/odometer'
import { dayIn, instantOf } from '@bayledger/reckoning/ready/zoned-time'
import { useQuery } from '@tanstack/react-query'
import { useState } from 'react'
import { draftEntry, type WrittenDraft } from '../../../features/ledger/draft-entry.ts'
import { useWriteEntries } from '../../../features/ledger/write-entries.ts'
import { settingsQuery } from '../../../features/settings/queries.ts'
import { fieldTime } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ChoiceGroup } from '../../../ui/choice-group.tsx'
import { Dialog } from '../../../ui/dialog.tsx'
import type { TypedFigure } from '../../../ui/number-text.ts'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { comparedWith, type JudgeOdometer, odometerFault, odometerRead } from '../odometer.ts'
import { OdometerField } from '../odometer-field.tsx'
import { useShopClock } from '../shop-clock.ts'
import { promiseFault } from '../write-up/promise-fault.ts'
import { PromiseFields } from '../write-up/promise-fields.tsx'
import type { OrderPart } from './order-part.ts'

/** Promise, waiting, place and odometer, written again; only what was changed is written. */
export function EditStay({ order, onClose }: OrderPart & { onClose: () => void }) {
  const { state } = order
  const settings = useQuery(settingsQuery)
  const clock = useShopClock()
  const promisedAt = state.opened?.promisedAt ?? null
  const before = {
    waits: state.opened?.waitsHere ? ('here' as const) : ('leaves' as const),
    promised: promisedAt === null ? '' : fieldTime(promisedAt, clock),
    promisedOn: promisedAt === null ? null : dayIn(new Date(promisedAt), clock.timeZone),
    place: state.locationId,
    came: state.opened?.odometer?.value ?? null,
  }
  const [waits, setWaits] = useState(before.waits as 'here' | 'leaves')
  const [typed, setTyped] = useState<{ time: string; day: string | null } | null>(null)
  const today = dayIn(new Date(), clock.timeZone)
  const promise = typed ?? { time: before.promised, day: before.promisedOn }
  const isPromiseChanged =
    promise.time !== before.promised ||
    (promise.time !== '' && (promise.day ?? today) !== (before.promisedOn ?? today))
  const [place, setPlace] = useState(before.place)
  const [came, setCame] = useState<TypedFigure>(before.came)
  const [leaves, setLeaves] = useState<TypedFigure>(state.odometerLeaving?.odometer.value ?? null)
  const [twice, setTwice] = useState({ came: false, leaves: false })
  const write = useWriteEntries(order.orderId)
  const wasLeaving = state.odometerLeaving?.odometer.value ?? null
  const now = new Date().toISOString()
  const judgeCame: JudgeOdometer = (read, confirmed) =>
    came === before.came
      ? null
      : arrivalOdometerDoubt(state, read, beforeArrival(order.earlierOdometer, now), confirmed)
  const judgeLeaves =
    leaves === wasLeaving ? () => null : comparedWith(beforeLeaving(state, order.earlierOdometer, now))

  const entries: WrittenDraft[] = [
    ...(waits === before.waits && !isPromiseChanged
      ? []
      : [
          draftEntry(order.orderId, 'stay.changed', {
            waitsHere: waits === 'here',
            promisedAt: isPromiseChanged
              ? instantOf(promise.day ?? today, promise.time, clock.timeZone)
              : promisedAt,
          }),
        ]),
    ...(place === null || place === before.place
      ? []
      : [draftEntry(order.orderId, 'order.moved', { locationId: place })]),
    ...odometerEntry(order.orderId, 'arrival', came, before.came, twice.came),
    ...odometerEntry(order.orderId, 'leaving', leaves, wasLeaving, twice.leaves),
  ]
  const locations = settings.data?.locations ?? []
  return (
    <Dialog title="The stay" onClose={onClose}>
      <div className="stack">
        <ChoiceGroup
          label="The customer"
          options={[
            { value: 'here', label: 'Waits here' },
            { value: 'leaves', label: 'Leaves the vehicle' },
          ]}
          value={waits}
          onChange={setWaits}
        />
        <PromiseFields time={promise.time} day={promise.day} timeZone={clock.timeZone} onChange={setTyped} />
        {locations.length < 2 ? null : (
          <ChoiceGroup
            label="At"
            options={locations.map(({ locationId, name }) => ({ value: locationId, label: name }))}
            value={place}
            onChange={setPlace}
          />
        )}
        <OdometerField
          label="Odometer as it came"
          value={came}
          judge={judgeCame}
          confirmed={twice.came}
          onChange={setCame}
          onConfirm={(confirmed) => setTwice((now) => ({ ...now, came: confirmed }))}
        />
        <OdometerField
          label="Odometer as it leaves"
          value={leaves}
          judge={judgeLeaves}
          confirmed={twice.leaves}
          onChange={setLeaves}
          onConfirm={(confirmed) => setTwice((now) => ({ ...now, leaves: confirmed }))}
        />
        {write.isError ? <ProblemNotice problem={problemText(write.error)} /> : null}
        <Button
          look="main"
          busy={write.isPending}
          whyNot={
            promiseFault(promise.time, promise.day) ??
            odometerFault(came, judgeCame, twice.came) ??
            odometerFault(leaves, judgeLeaves, twice.leaves) ??
            (entries.length === 0 ? 'Nothing is changed yet.' : undefined)
          }
          onClick={() => write.mutate({ entries }, { onSuccess: onClose })}
        >
          Save
        </Button>
      </div>
    </Dialog>
  )
}

const odometerEntry = (
  orderId: string,
  when: 'arrival' | 'leaving',
  typed: TypedFigure,
  before: number | null,
  confirmed: boolean,
): WrittenDraft[] => {
  const odometer = odometerRead(typed)
  return odometer === null || typed === before
    ? []
    : [draftEntry(orderId, 'odometer.read', { when, odometer, confirmed })]
}
