import { torquedBy } from '@bayledger/ledger/questions/gates'
import type { PayloadOf } from '@bayledger/ledger/registry'
import { definitionOf } from '@bayledger/ledger/registry'
import { namedOnly } from '@bayledger/ledger/second-person'
import type { OrderState } from '@bayledger/ledger/state'
import type { WheelPosition } from '@bayledger/reckoning/wheels'
import { useQuery } from '@tanstack/react-query'
import { draftEntry } from '../../../features/ledger/draft-entry.ts'
import { staffQuery } from '../../../features/people/queries.ts'
import type { FilledForm } from '../../../ledger/parcel.ts'
import { SecondPersonPin } from '../record/second-person-pin.tsx'
import { useRecord } from '../record/use-record.ts'
import { useSignedIn, useWorksAlone } from '../session/signed-in.ts'

/** Who may check this wheel: nobody who torqued it, unless nobody else is there. */
export const useCheckers = (state: OrderState, wheel: WheelPosition) => {
  const staff = useQuery(staffQuery).data?.staff ?? []
  const worksAlone = useWorksAlone()
  const { agreedBy } = definitionOf('torque.checked')
  const doers = torquedBy(state.work[wheel]).flatMap((author) =>
    author.kind === 'staff' ? [author.staffId] : [],
  )
  return staff.filter(
    ({ staffId, roles }) =>
      roles.some((role) => agreedBy.includes(role)) && (worksAlone || !doers.includes(staffId)),
  )
}

type SealCheckProps = {
  state: OrderState
  wheel: WheelPosition
  title: string
  /** What was found, as the round was held down to be sealed. */
  round: Omit<PayloadOf<'torque.checked'>, 'checkedBy'>
  /** What was filled in, as it is filled in again should the ledger refuse it. */
  form: FilledForm
  onBack: () => void
  onSealed: () => void
}

/**
 * Whoever went round with the wrench seals the check with their own PIN, whoever is signed in on this tablet. The ledger
 * takes no check without it.
 */
export function SealCheck({ state, wheel, title, round, form, onBack, onSealed }: SealCheckProps) {
  const { recordAll, busy, problem } = useRecord(state.orderId)
  const signedIn = useSignedIn()
  const people = useCheckers(state, wheel)
  return (
    <SecondPersonPin
      title={title}
      people={people}
      likely={people.find(({ staffId }) => staffId === signedIn?.staffId) ?? null}
      asks={{
        name: 'Who went round with the wrench? Tap your name.',
        pin: 'type your 6-digit PIN. It seals the check.',
      }}
      onBack={onBack}
      busy={busy}
      problem={problem}
      onPin={async (staffId, pin) => {
        const checked = draftEntry(state.orderId, 'torque.checked', {
          ...round,
          checkedBy: namedOnly(staffId),
        })
        const taken = await recordAll([checked], `${wheel} check`, { form, pin })
        if (taken) onSealed()
        return taken
      }}
    />
  )
}
