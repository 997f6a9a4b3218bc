import { type LegalHold, liftHold, listHolds, placeHold } from '@bayledger/contract/holds'
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import { useState } from 'react'
import { call } from '../../../lib/api-client.ts'
import { clockTimeOrDay } from '../../../lib/format.ts'
import { problemText } from '../../../lib/problem.ts'
import { Button } from '../../../ui/button.tsx'
import { ProblemNotice } from '../../../ui/problem-notice.tsx'
import { TextField } from '../../../ui/text-field.tsx'
import { useShopClock } from '../shop-clock.ts'

/** What is held, and whose it is; `subjectId` is the customer's or the order's id. */
export type Held = Pick<LegalHold, 'subject' | 'subjectId' | 'customerId'>

/** Legal holds on a customer and their orders, or on one order: placed with a reason, lifted by an owner. */
export function LegalHolds({ held, mayLift }: { held: Held; mayLift: boolean }) {
  const { subject, subjectId, customerId } = held
  const client = useQueryClient()
  const [reason, setReason] = useState('')
  const holds = useQuery({
    queryKey: ['holds'],
    queryFn: ({ signal }) => call(listHolds, { signal }),
    staleTime: 0,
  })
  const readAgain = () =>
    Promise.all([
      client.invalidateQueries({ queryKey: ['holds'] }),
      client.invalidateQueries({ queryKey: ['customer', customerId] }),
    ])
  const place = useMutation({
    mutationFn: () => call(placeHold, { body: { subject, subjectId, reason: reason.trim() } }),
    onSuccess: () => setReason(''),
    onSettled: readAgain,
  })
  const lift = useMutation({
    mutationFn: (holdId: string) => call(liftHold, { params: { holdId } }),
    onSettled: readAgain,
  })
  const all = holds.data?.holds ?? []
  const own = all.filter((hold) =>
    subject === 'customer' ? hold.customerId === customerId : hold.subjectId === subjectId,
  )
  const isHeld = own.some((hold) => hold.subjectId === subjectId && hold.liftedAt === null)
  const problem = holds.error ?? place.error ?? lift.error
  return (
    <div className="stack">
      <p>{`While there is a legal hold, nothing of this ${subject} is erased.`}</p>
      {problem === null ? null : <ProblemNotice problem={problemText(problem)} />}
      {own.map((hold) => (
        <Hold
          key={hold.holdId}
          hold={hold}
          busy={lift.isPending}
          onLift={mayLift ? () => lift.mutate(hold.holdId) : null}
        />
      ))}
      {isHeld ? null : (
        <>
          <TextField
            label="Reason for a hold"
            hint="A claim, a complaint, a letter of an authority. Leave names out."
            maxLength={300}
            value={reason}
            onChange={setReason}
          />
          <div className="row">
            <Button
              busy={place.isPending}
              whyNot={reason.trim() === '' ? 'Write the reason first.' : undefined}
              onClick={() => place.mutate()}
            >
              Place a legal hold
            </Button>
          </div>
        </>
      )}
    </div>
  )
}

type HoldProps = { hold: LegalHold; busy: boolean; onLift: (() => void) | null }

function Hold({ hold, busy, onLift }: HoldProps) {
  const clock = useShopClock()
  const now = new Date().toISOString()
  const { subject, name, reason, placedBy, placedAt, liftedBy, liftedAt } = hold
  const on = subject === 'order' ? `Order ${name}` : 'The customer'
  return (
    <div className="row">
      <p>
        {`${on}: ${reason} (${placedBy}, ${clockTimeOrDay(placedAt, now, clock)}).`}
        {liftedAt === null ? '' : ` Lifted by ${liftedBy}, ${clockTimeOrDay(liftedAt, now, clock)}.`}
      </p>
      {liftedAt === null && onLift !== null ? (
        <Button busy={busy} onClick={onLift}>
          Lift the hold
        </Button>
      ) : null}
    </div>
  )
}
